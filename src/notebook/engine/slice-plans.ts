// Which table a question means, and its columns: the table that has all of them; if several have, `of TABLE` says which.
import { type Column, type ColumnTable, withColumn } from "../../core/columns/index.ts";
import { nearestName } from "../../core/formula/index.ts";
import type { NameAt } from "../language/index.ts";
import {
  type CellPlan,
  type Computed,
  computed,
  failed,
  type Inputs,
  type LocalProblem,
  needs,
  type Slice,
  waitsFor,
} from "./cell.ts";
import { cells } from "./cells.ts";
import type { Surroundings } from "./surroundings.ts";

export type SliceNeed = { readonly key: string; readonly names: readonly NameAt[]; readonly of: NameAt | null };

/** Where a name is to be had in a table: in its file, or as a formula. */
const has = (table: string, heads: readonly string[], name: string, around: Surroundings): boolean =>
  heads.includes(name) || around.formulas.get(table)?.has(name) === true;

/** The table of a question, or what is wrong with its names. */
function homeOf({ names, of }: SliceNeed, around: Surroundings, inputs: Inputs): Computed<string> {
  if (of && !around.tables.includes(of.name)) {
    return failed(unknown("unknown-table", { name: of.name }, of, around.tables));
  }
  const candidates = of ? [of.name] : around.tables;
  const read = candidates.flatMap((table) => {
    const heads = inputs.get(cells.heads(table));
    return heads.ok
      ? [{ table, heads: heads.value, lacks: names.filter((name) => !has(table, heads.value, name.name, around)) }]
      : [];
  });
  const whole = read.filter((each) => each.lacks.length === 0);
  if (whole.length > 1 && names.length > 0) {
    return failed({
      code: "several-tables",
      facts: { tables: whole.map((each) => each.table).join(", ") },
      span: names[0] ?? null,
    });
  }
  if (whole[0]) return computed(whole[0].table);
  const unread = candidates.find((table) => !read.some((each) => each.table === table));
  if (unread !== undefined) return failed(waitsFor(unread, of ?? names[0] ?? null));
  const best = read.reduce<(typeof read)[number] | undefined>(
    (least, each) => (!least || each.lacks.length < least.lacks.length ? each : least),
    undefined,
  );
  if (!best) return failed({ code: "unknown-name", facts: { name: names[0]?.name ?? "this" }, span: names[0] ?? null });
  const known = [...best.heads, ...(around.formulas.get(best.table) ?? []), ...around.amounts.keys()];
  return failed(
    ...best.lacks.map((name) => unknown("unknown-column", { name: name.name, table: best.table }, name, known)),
  );
}

const unknown = (
  code: LocalProblem["code"],
  facts: LocalProblem["facts"],
  at: NameAt,
  known: Iterable<string>,
): LocalProblem => {
  const suggestion = nearestName(at.name, known);
  return { code, facts, span: { from: at.from, to: at.to }, ...(suggestion === undefined ? {} : { suggestion }) };
};

/** The table with the formula columns that are named, each there or the question waits for it. */
function sliceOf({ key, names }: SliceNeed, around: Surroundings, inputs: Inputs): Computed<Slice> {
  const home = inputs.get(cells.home(key));
  if (!home.ok) return failed();
  const table = inputs.get(cells.table(home.value));
  if (!table.ok) return failed(waitsFor(home.value, null));
  const formulas: Column[] = [];
  const waiting: LocalProblem[] = [];
  for (const name of names) {
    if (!around.formulas.get(home.value)?.has(name.name)) continue;
    const column = inputs.get(cells.column(home.value, name.name));
    if (column.ok) formulas.push(column.value);
    else waiting.push(waitsFor(name.name, name));
  }
  if (waiting.length > 0) return failed(...waiting);
  return computed({
    table: formulas.reduce<ColumnTable>((all, column) => withColumn(all, column), table.value),
    formulas,
  });
}

/** Cells that find the table of an entry and cut out what the entry needs; names that are values or dials are not columns. */
export function slicePlans(need: SliceNeed, around: Surroundings): readonly CellPlan[] {
  const names = need.names.filter((name) => !around.amounts.has(name.name));
  const own: SliceNeed = { ...need, names };
  const key = JSON.stringify([own, around.tables]);
  const formulaNeeds = around.tables.flatMap((table) =>
    names
      .filter((name) => around.formulas.get(table)?.has(name.name))
      .map((name) => needs(cells.column(table, name.name), name.name, name)),
  );
  const declared = JSON.stringify([...around.formulas].map(([table, columns]) => [table, ...columns]));
  return [
    {
      cell: cells.home(need.key),
      says: need.key,
      base: 0,
      key: `home ${key} ${declared} ${[...around.amounts.keys()].join(" ")}`,
      needs: around.tables.map((table) => needs(cells.heads(table))),
      run: (inputs) => homeOf(own, around, inputs),
    },
    {
      cell: cells.slice(need.key),
      says: need.key,
      base: 0,
      key: `slice ${key} ${formulaNeeds.map((each) => each.cell.id).join(" ")}`,
      needs: [needs(cells.home(need.key)), ...around.tables.map((table) => needs(cells.table(table))), ...formulaNeeds],
      run: (inputs) => sliceOf(own, around, inputs),
    },
  ];
}
