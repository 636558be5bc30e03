import type { Entry } from "../../../language/index.ts";
import { computed, failed, needs } from "../../cell.ts";
import { cells } from "../../cells.ts";
import { type EntryPlan, onlyProblems } from "../../entry-kind.ts";
import type { Surroundings } from "../../surroundings.ts";
import { runUse } from "./run-use.ts";

/** Columns of another notebook, as a table under this entry's name. */
export function checkUse(entry: Entry, _key: string, around: Surroundings): EntryPlan {
  if (entry.syntax?.kind !== "use") return onlyProblems();
  const { names, file } = entry.syntax;
  const table = cells.table(entry.name);
  const path = around.pathOf(file);
  const given = around.given?.get(entry.name);
  return {
    problems: [],
    shows: table,
    cells: [
      {
        cell: table,
        says: entry.name,
        base: 0,
        needs: [],
        key: JSON.stringify(["use", names, path, around.generation(path), around.given !== null]),
        run: () => (given ? computed(given) : runUse({ entry: entry.name, names, file, path }, around)),
      },
      {
        cell: cells.heads(entry.name),
        says: entry.name,
        base: 0,
        needs: [needs(table)],
        key: "heads",
        run: (inputs) => {
          const made = inputs.get(table);
          return made.ok ? computed([...made.value.columns.keys()]) : failed();
        },
      },
    ],
  };
}
