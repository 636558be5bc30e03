// Names and units of a table's columns, which of them exist at all, and warnings about them.

import { heading } from "../readers/heading.ts";
import type { ColumnKind } from "../reading.ts";
import { isEmptyAt } from "../source/is-empty-field.ts";
import { fieldsOf, widthOf } from "../source/raw-records.ts";
import { unitOfField } from "./is-units-row.ts";
import type { TableLayout } from "./table-layout.ts";

/** `place`: position in the records, from 0; `kind`: what the maker says of the column in its description, null where nothing. */
export type ColumnHead = {
  readonly place: number;
  readonly name: string;
  readonly unit: string | null;
  readonly kind: ColumnKind | null;
  readonly warnings: readonly string[];
};

export function freeName(name: string, taken: ReadonlySet<string>): string {
  let free = name;
  for (let number = 2; taken.has(free); number++) free = `${name} (${number})`;
  return free;
}

/** Whether each place has a value in some row. */
function filledPlaces({ records, rows }: TableLayout): boolean[] {
  const filled: boolean[] = [];
  let open = 0;
  for (const row of rows) {
    const width = widthOf(records, row);
    for (; filled.length < width; open++) filled.push(false);
    const first = records.firsts[row] ?? 0;
    for (let place = 0; place < width && open > 0; place++)
      if (!filled[place] && !isEmptyAt(records, first + place)) {
        filled[place] = true;
        open--;
      }
  }
  return filled;
}

/** The columns with a name or a value, in order. */
export function columnHeads(layout: TableLayout): ColumnHead[] {
  const { records, header, units } = layout;
  const names = header === null ? [] : fieldsOf(records, header);
  const beneathNames = units === null ? null : fieldsOf(records, units);
  const filled = filledPlaces(layout);
  const taken = new Set<string>();
  const heads: ColumnHead[] = [];
  for (let place = 0; place < Math.max(names.length, filled.length); place++) {
    const own = heading(names[place] ?? "");
    if (own.name === "" && !filled[place]) continue;
    const warnings: string[] = [];
    const wanted = own.name === "" ? `column ${place + 1}` : own.name;
    if (own.name === "" && header !== null) warnings.push("unnamed-column");
    const name = freeName(wanted, taken);
    if (name !== wanted) warnings.push("duplicate-column");
    taken.add(name);
    const beneath = beneathNames === null ? null : unitOfField(beneathNames[place] ?? "");
    if (beneath === undefined) warnings.push("unknown-unit");
    heads.push({ place, name, unit: own.unit ?? beneath ?? null, kind: null, warnings });
  }
  return heads;
}
