// Names and units of a table's columns, which of them exist at all, and warnings about them.
import { heading } from "../readers/heading.ts";
import { isEmptyField } from "./field-sort.ts";
import { unitOfField } from "./record-shape.ts";
import type { TableLayout } from "./table-layout.ts";

/** `place`: position in the records, from 0. */
export type ColumnHead = {
  readonly place: number;
  readonly name: string;
  readonly unit: string | null;
  readonly warnings: readonly string[];
};

function freeName(name: string, taken: ReadonlySet<string>): string {
  let free = name;
  for (let number = 2; taken.has(free); number++) free = `${name} (${number})`;
  return free;
}

/** The columns with a name or a value, in order. */
export function columnHeads({ header, units, rows }: TableLayout): ColumnHead[] {
  const filled: boolean[] = [];
  for (const { fields } of rows)
    for (let at = 0; at < fields.length; at++) if (!filled[at] && !isEmptyField(fields[at])) filled[at] = true;
  const width = Math.max(header?.fields.length ?? 0, filled.length);
  const taken = new Set<string>();
  const heads: ColumnHead[] = [];
  for (let place = 0; place < width; place++) {
    const own = heading(header?.fields[place] ?? "");
    if (own.name === "" && !filled[place]) continue;
    const warnings: string[] = [];
    const wanted = own.name === "" ? `column ${place + 1}` : own.name;
    if (own.name === "" && header) warnings.push("unnamed-column");
    const name = freeName(wanted, taken);
    if (name !== wanted) warnings.push("duplicate-column");
    taken.add(name);
    const beneath = units ? unitOfField(units.fields[place] ?? "") : null;
    if (beneath === undefined) warnings.push("unknown-unit");
    heads.push({ place, name, unit: own.unit ?? beneath ?? null, warnings });
  }
  return heads;
}
