import type { Entry } from "../../../language/index.ts";
import type { Inputs } from "../../cell.ts";
import { cells } from "../../cells.ts";
import type { EntryPart } from "../../entry-kind.ts";
import type { Surroundings } from "../../surroundings.ts";
import { tableInShort, tableView } from "../../table-view.ts";

/** The record table as a grid of its measured columns. */
export function viewRecords(entry: Entry, _key: string, inputs: Inputs, around: Surroundings): EntryPart | null {
  const table = inputs.get(cells.table(entry.name));
  if (!table.ok) return null;
  const columns = [...table.value.columns.values()];
  const files = new Set(columns.flatMap(({ origin }) => (origin.from === "file" ? [origin.file] : [])));
  return {
    table: tableInShort(table.value, columns),
    view: { ...tableView(table.value, columns, entry.name, around.gridCells), files: [...files] },
  };
}
