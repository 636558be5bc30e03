import type { Entry } from "../../../language/index.ts";
import { needs } from "../../cell.ts";
import { cells } from "../../cells.ts";
import { type EntryPlan, onlyProblems } from "../../entry-kind.ts";
import { expressionNames } from "../../expression-names.ts";
import { slicePlans } from "../../slice-plans.ts";
import type { Surroundings } from "../../surroundings.ts";
import type { PictureSpec } from "./picture-spec.ts";
import { runPicture } from "./run-picture.ts";

/** A picture of columns, without an answer: nothing is entered in the ledger. */
export function checkPicture(entry: Entry, key: string, around: Surroundings): EntryPlan {
  if (entry.syntax?.kind !== "picture") return onlyProblems();
  if (around.tables.length === 0)
    return onlyProblems({ code: "unknown-table", facts: { name: "to draw" }, span: null });
  const { y, x, by, where, of } = entry.syntax;
  const names = expressionNames(y, x, by, where);
  const amounts = names.filter((each) => around.amounts.has(each.name));
  const spec: PictureSpec = { key, y, x, by, where, amounts: amounts.map((each) => each.name) };
  return {
    problems: [],
    shows: cells.picture(key),
    cells: [
      ...slicePlans({ key, names, of }, around),
      {
        cell: cells.picture(key),
        says: entry.name,
        base: 0,
        key: JSON.stringify(spec),
        needs: [needs(cells.slice(key)), ...amounts.map((each) => needs(cells.amount(each.name), each.name, each))],
        run: (inputs) => runPicture(spec, inputs),
      },
    ],
  };
}
