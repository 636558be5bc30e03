// What a rule claims, its names looked up: the mapped record makes sure that no sort of claim is forgotten.
import type { Column, ColumnTable, GradeColumn, LabelColumn } from "../../../../core/columns/index.ts";
import { sameDimension, unitFromCode } from "../../../../core/units/index.ts";
import type { RuleClaim } from "../../../../core/verdicts/index.ts";
import type { RuleSyntax } from "../../../language/index.ts";
import type { ColumnReader } from "./column-reader.ts";

type Claiming<C extends RuleSyntax["claims"]> = (
  rule: Extract<RuleSyntax, { readonly claims: C }>,
  read: ColumnReader,
  table: ColumnTable,
) => RuleClaim | null;

/** The column that has both groups among its names. */
function groupsOf(table: ColumnTable, first: string, second: string): LabelColumn | GradeColumn | null {
  const namesOf = (column: Column): readonly string[] =>
    column.kind === "label" ? column.names : column.kind === "grade" ? column.levels : [];
  const found = [...table.columns.values()].find(
    (column) => namesOf(column).includes(first) && namesOf(column).includes(second),
  );
  return found && (found.kind === "label" || found.kind === "grade") ? found : null;
}

const movesWith: Claiming<"moves-with"> = (rule, read) => {
  const [y, x] = [read.quantity(rule.y), read.quantity(rule.x)];
  const least = rule.byAtLeast ? read.amount(rule.byAtLeast) : null;
  if (!x || !y) return null;
  const per = least && sameDimension(unitFromCode(least.unit).dimension, y.dimension) ? "middle-half" : "slope";
  return {
    claims: "moves-with",
    x,
    xMoves: rule.xMoves,
    y,
    yMoves: rule.yMoves,
    byAtLeast: least ? { ...least, per } : null,
  };
};
const holds: Claiming<"holds"> = (rule, read) => {
  const [when, expect] = [read.condition(rule.when), read.condition(rule.expect)];
  return when && expect ? { claims: "holds", when, expect, atLeast: rule.atLeast } : null;
};
const staysWithin: Claiming<"stays-within"> = (rule, read) => {
  const [y, of, tolerance] = [read.quantity(rule.y), read.quantity(rule.of), read.amount(rule.within_)];
  return y && of && tolerance ? { claims: "stays-within", y, of, tolerance } : null;
};
const giveOrTake: Claiming<"give-or-take"> = (rule, read) => {
  const [y, of, tolerance] = [read.quantity(rule.y), read.quantity(rule.is), read.amount(rule.tolerance)];
  return y && of && tolerance ? { claims: "give-or-take", y, of, tolerance } : null;
};
const hasMore: Claiming<"has-more"> = (rule, read, table) => {
  const [y, least] = [read.quantity(rule.y), rule.byAtLeast ? read.amount(rule.byAtLeast) : null];
  const groups = groupsOf(table, rule.more, rule.less);
  if (!y || !groups) return null;
  const [more, less] = rule.moreOrLess === "more" ? [rule.more, rule.less] : [rule.less, rule.more];
  return { claims: "has-more", groups, more, less, y, byAtLeast: least };
};
const sameWithin: Claiming<"same-within"> = (rule, read) => {
  const [a, b, tolerance] = [read.quantity(rule.a), read.quantity(rule.b), read.amount(rule.tolerance)];
  return a && b && tolerance ? { claims: "same-within", a, b, tolerance } : null;
};

const claiming: { readonly [C in RuleSyntax["claims"]]: Claiming<C> } = {
  "moves-with": movesWith,
  holds,
  "stays-within": staysWithin,
  "give-or-take": giveOrTake,
  "has-more": hasMore,
  "same-within": sameWithin,
};

/** The claim with columns and amounts in place of formulas; null when something in it has a problem, which the reader keeps. */
export const resolvedClaim = (rule: RuleSyntax, read: ColumnReader, table: ColumnTable): RuleClaim | null =>
  (claiming[rule.claims] as (rule: RuleSyntax, read: ColumnReader, table: ColumnTable) => RuleClaim | null)(
    rule,
    read,
    table,
  );
