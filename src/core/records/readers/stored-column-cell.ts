// A cell that a workbook keeps as more than text, as the readers of columns see it.
import type { StoredCell } from "../source/stored-cell.ts";
import type { ColumnCell } from "./column-source.ts";
import { field } from "./field.ts";
import { importUnit } from "./import-unit.ts";
import type { DraftOrCode } from "./quantity-draft.ts";
import { specialWords } from "./special-words.ts";

/** A stored number as a draft: nothing about it waits for the column. */
function draftOfNumber(value: number, unit: string | null): DraftOrCode {
  if (unit !== null && importUnit(unit) === null) return { form: "none", code: "unknown-unit" };
  const [body = "", exponent = "0"] = String(Math.abs(value)).split("e");
  const sign = value < 0 ? -1 : 1;
  return {
    form: "plain",
    first: { shape: "numeral", sign, body, exponent: Number(exponent), vote: "certain" },
    second: null,
    digits: "",
    unit,
    percent: false,
    marks: [],
  };
}

const dateAmongNumbers: DraftOrCode = { form: "none", code: "date-in-number-column" };
const noNumber: DraftOrCode = { form: "none", code: "unreadable-number" };

function draftOf(stored: StoredCell): DraftOrCode {
  if (stored.as === "number") return draftOfNumber(stored.value, stored.unit);
  return stored.as === "date" ? dateAmongNumbers : noNumber;
}

/** The cell of a stored value. A date is read by its ISO text, whatever number stands for it in the file. */
export function storedColumnCell(stored: StoredCell, raw: string): ColumnCell {
  const own = field(raw);
  const from = stored.as === "date" ? { ...own, text: stored.value } : own;
  const special =
    stored.as === "error"
      ? "sheet-error"
      : stored.as === "lost-formula"
        ? "formula-without-value"
        : specialWords(own.text);
  return { field: from, special, formula: false, draft: special === null ? draftOf(stored) : null, rows: 1, stored };
}
