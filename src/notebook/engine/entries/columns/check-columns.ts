import type { Expression } from "../../../../core/formula/index.ts";
import { nearestName } from "../../../../core/formula/index.ts";
import type { Entry } from "../../../language/index.ts";
import { type CellPlan, type LocalProblem, needs } from "../../cell.ts";
import { cells } from "../../cells.ts";
import { type EntryPlan, onlyProblems } from "../../entry-kind.ts";
import { expressionNames } from "../../expression-names.ts";
import { rebased } from "../../rebased.ts";
import { type Surroundings, tableOfColumns } from "../../surroundings.ts";
import type { ColumnSpec } from "./column-spec.ts";
import { runColumns } from "./run-columns.ts";

/** One cell for each formula, so that an edit of one recomputes it and what rests on it, and nothing else. */
export function checkColumns(entry: Entry, _key: string, around: Surroundings): EntryPlan {
  if (entry.syntax?.kind !== "columns") return onlyProblems();
  const table = tableOfColumns(entry, around.tables);
  if (!around.tables.includes(table)) {
    const suggestion = nearestName(table, around.tables);
    return onlyProblems({
      code: "unknown-table",
      facts: { name: table },
      span: null,
      ...(suggestion ? { suggestion } : {}),
    });
  }
  const problems: LocalProblem[] = [];
  const plans: CellPlan[] = [];
  const seen = new Set<string>();
  for (const column of entry.syntax.columns) {
    const name = column.name.name;
    if (seen.has(name)) {
      problems.push({ code: "name-taken", facts: { name }, span: column.name });
      continue;
    }
    seen.add(name);
    plans.push(
      columnPlan(
        table,
        name,
        rebased(column.expression, column.from),
        entry.body.slice(column.expression.from, column.expression.to),
        column.from,
        around,
      ),
    );
  }
  return { cells: plans, problems, shows: cells.table(table) };
}

function columnPlan(
  table: string,
  name: string,
  expression: Expression,
  text: string,
  base: number,
  around: Surroundings,
): CellPlan {
  const named = expressionNames(expression);
  const formulas = named.filter((each) => around.formulas.get(table)?.has(each.name));
  const amounts = named.filter((each) => around.amounts.has(each.name) && !formulas.includes(each));
  const spec: ColumnSpec = {
    table,
    name,
    text: text.trim(),
    expression,
    formulas: formulas.map((each) => each.name),
    amounts: amounts.map((each) => each.name),
  };
  return {
    cell: cells.column(table, name),
    says: name,
    base,
    key: JSON.stringify(spec),
    needs: [
      needs(cells.table(table), table),
      ...formulas.map((each) => needs(cells.column(table, each.name), each.name, each)),
      ...amounts.map((each) => needs(cells.amount(each.name), each.name, each)),
    ],
    run: (inputs) => runColumns(spec, inputs),
  };
}
