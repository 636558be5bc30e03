// A column's fields as a reader wants them: by the evidence first, and once the kind is known, as that kind needs them.
import type { ColumnHead } from "../layout/column-heads.ts";
import type { ReadOptions } from "../read-options.ts";
import { fieldAt } from "../source/raw-records.ts";
import type { ColumnScan } from "./column-scan.ts";
import { type ColumnCell, type ColumnSource, wordsOf } from "./column-source.ts";
import { field } from "./field.ts";
import { isPlainWord } from "./is-plain-word.ts";
import { quantityDraft } from "./quantity-draft.ts";
import { isFormulaLike, specialWords } from "./special-words.ts";
import { storedColumnCell } from "./stored-column-cell.ts";

/** In a workbook a text that is nothing but a number is one that the sheet could have stored. */
function storedAsText(draft: ColumnCell["draft"]): ColumnCell["draft"] {
  if (draft?.form !== "plain" || draft.first.shape !== "numeral" || draft.unit !== null || draft.marks.length > 0)
    return draft;
  return { ...draft, marks: ["number-as-text"] };
}

/** `missing`: texts that the maker says are blanks; `names`: whether only the text reader will look, to which plain words are no cells and no cell is a number. */
export function sourceOfColumn(
  scan: ColumnScan,
  head: ColumnHead,
  options: ReadOptions,
  missing: ReadonlySet<string>,
  names: boolean,
): ColumnSource {
  const { records, texts, lone, numerals } = scan;
  const cellAt = new Int32Array(texts.size).fill(-1);
  const cells: ColumnCell[] = [];
  const isMissing = (text: string) => missing.size > 0 && missing.has(text);
  const add = (from: ColumnCell["field"], rows: number) => {
    const special = isMissing(from.text) ? "said-missing" : specialWords(from.text);
    const formula = special === null && isFormulaLike(from.text);
    const draft = special !== null || formula || names ? null : quantityDraft(from.text, head.unit);
    return (
      cells.push({
        field: from,
        special,
        formula,
        draft: records.stored === null ? draft : storedAsText(draft),
        rows,
      }) - 1
    );
  };
  for (let place = 0; place < texts.size; place++) {
    const start = texts.starts[place] ?? 0;
    const end = texts.ends[place] ?? 0;
    if (!names || !isPlainWord(texts.text, start, end) || isMissing(texts.text.slice(start, end)))
      cellAt[place] = add(field(texts.text.slice(start, end)), texts.counts[place] ?? 0);
  }
  for (const at of lone) {
    const stored = records.stored?.[at];
    if (stored && !isMissing(fieldAt(records, at))) cells.push(storedColumnCell(stored, fieldAt(records, at)));
    else add(field(fieldAt(records, at), records.codes.get(at)), 1);
  }
  return {
    name: head.name,
    words: wordsOf(head.name),
    unit: head.unit,
    kind: head.kind,
    options,
    cells,
    numerals,
    scan,
    cellAt,
  };
}
