import type { Entry } from "../../../language/index.ts";
import { needs } from "../../cell.ts";
import { cells } from "../../cells.ts";
import { type EntryPlan, onlyProblems } from "../../entry-kind.ts";
import { expressionNames } from "../../expression-names.ts";
import { ledgerPlans } from "../../ledger-plans.ts";
import { slicePlans } from "../../slice-plans.ts";
import type { Surroundings } from "../../surroundings.ts";
import { ruleExpressions } from "./rule-expressions.ts";
import type { RuleSpec } from "./rule-spec.ts";
import { runRule } from "./run-rule.ts";

/** A rule of thumb: the table that has its columns, the count of the ledger, and the verdict. */
export function checkRule(entry: Entry, key: string, around: Surroundings): EntryPlan {
  if (entry.syntax?.kind !== "rule") return onlyProblems();
  if (around.tables.length === 0)
    return onlyProblems({ code: "unknown-table", facts: { name: "to judge" }, span: null });
  const { rule } = entry.syntax;
  const names = expressionNames(...ruleExpressions(rule));
  const amounts = names.filter((each) => around.amounts.has(each.name));
  const spec: RuleSpec = { key, words: entry.body.trim(), rule, amounts: amounts.map((each) => each.name) };
  return {
    problems: [],
    shows: cells.answer(key),
    cells: [
      ...slicePlans({ key, names, of: null }, around),
      ...ledgerPlans(key),
      {
        cell: cells.answer(key),
        says: entry.name,
        base: 0,
        key: JSON.stringify(spec),
        needs: [
          needs(cells.slice(key)),
          needs(cells.askedOf(key)),
          ...amounts.map((each) => needs(cells.amount(each.name), each.name, each)),
        ],
        run: (inputs) => runRule(spec, inputs),
      },
    ],
  };
}
