import { declined, type Outcome, succeeded } from "../../core/base/index.ts";
import type { Column, LabelColumn } from "../../core/columns/index.ts";
import { kindInWords } from "./kind-in-words.ts";

/** A label to group by; grades, yes/no and short words are labels too. Null where the column cannot group. */
export function labelOf(column: Column): LabelColumn | null {
  if (column.kind === "label") return column;
  const { name, header, origin, warnings } = column;
  if (column.kind === "grade")
    return { kind: "label", name, header, origin, warnings, codes: column.codes, names: column.levels };
  if (column.kind === "yes-no")
    return {
      kind: "label",
      name,
      header,
      origin,
      warnings,
      codes: Int32Array.from(column.values),
      names: ["no", "yes"],
    };
  if (column.kind === "words") {
    const names = [...new Set(column.texts.filter((text) => text !== null))].sort((a, b) =>
      a < b ? -1 : a > b ? 1 : 0,
    );
    const place = new Map(names.map((text, code) => [text, code]));
    return {
      kind: "label",
      name,
      header,
      origin,
      warnings,
      codes: Int32Array.from(column.texts, (text) => (text === null ? -1 : (place.get(text) ?? -1))),
      names,
    };
  }
  return null;
}

/** A label, or the refusal that says what was found. */
export function neededLabel(column: Column): Outcome<LabelColumn> {
  const label = labelOf(column);
  return label
    ? succeeded(label)
    : declined("wrong-kind", { column: column.name, found: kindInWords[column.kind], needed: "a label" });
}
