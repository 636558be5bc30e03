import type { Column } from "../../../../core/columns/index.ts";
import { withColumn } from "../../../../core/columns/index.ts";
import type { Entry } from "../../../language/index.ts";
import type { Inputs } from "../../cell.ts";
import { cells } from "../../cells.ts";
import type { EntryPart } from "../../entry-kind.ts";
import { type Surroundings, tableOfColumns } from "../../surroundings.ts";
import { tableInShort, tableView } from "../../table-view.ts";

/** The formula columns of this entry that could be computed, row by row. */
export function viewColumns(entry: Entry, _key: string, inputs: Inputs, around: Surroundings): EntryPart | null {
  if (entry.syntax?.kind !== "columns") return null;
  const name = tableOfColumns(entry, around.tables);
  const table = inputs.get(cells.table(name));
  if (!table.ok) return null;
  const columns = entry.syntax.columns.flatMap((each): readonly Column[] => {
    const column = inputs.get(cells.column(name, each.name.name));
    return column.ok ? [column.value] : [];
  });
  if (columns.length === 0) return null;
  const whole = columns.reduce((all, column) => withColumn(all, column), table.value);
  // What there is to say of the table itself stands with its records already.
  const own = { ...whole, notes: [] };
  return { table: tableInShort(own, columns), view: tableView(own, columns, name, around.gridCells) };
}
