import type { Entry } from "../../../language/index.ts";
import { needs } from "../../cell.ts";
import { cells } from "../../cells.ts";
import { type EntryPlan, onlyProblems } from "../../entry-kind.ts";
import { expressionNames } from "../../expression-names.ts";
import { slicePlans } from "../../slice-plans.ts";
import type { Surroundings } from "../../surroundings.ts";
import { runValue } from "./run-value.ts";
import type { ValueSpec } from "./value-spec.ts";

/** A value rests on other values and dials; one that names columns (`mean of density`) rests on their table besides. */
export function checkValue(entry: Entry, key: string, around: Surroundings): EntryPlan {
  if (entry.syntax?.kind !== "value") return onlyProblems();
  const { expression } = entry.syntax;
  const named = expressionNames(expression);
  const amounts = named.filter((each) => around.amounts.has(each.name));
  const usesTable = amounts.length < named.length && around.tables.length > 0;
  const spec: ValueSpec = {
    key,
    name: entry.name,
    text: entry.body.trim(),
    expression,
    amounts: amounts.map((each) => each.name),
    usesTable,
  };
  const cell = cells.amount(entry.name);
  return {
    problems: [],
    shows: cell,
    cells: [
      ...(usesTable ? slicePlans({ key, names: named, of: null }, around) : []),
      {
        cell,
        says: entry.name,
        base: 0,
        key: JSON.stringify(spec),
        needs: [
          ...amounts.map((each) => needs(cells.amount(each.name), each.name, each)),
          ...(usesTable ? [needs(cells.slice(key))] : []),
        ],
        run: (inputs) => runValue(spec, inputs),
      },
    ],
  };
}
