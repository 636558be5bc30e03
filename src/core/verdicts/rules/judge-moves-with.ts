// "when X rises, Y falls": the slope of Y on X, within groups where the rule says so, against zero or against the amount claimed.
import { declined, type Estimate, succeeded } from "../../base/index.ts";
import { quantile } from "../../numerics/index.ts";
import { answerRelation, intervalAmong } from "../../questions/index.ts";
import { amountInWords, scaleFactor } from "../../units/index.ts";
import type { JudgementOutcome } from "../judgement.ts";
import type { ResolvedRule } from "../resolved-rule.ts";
import type { RuleInput } from "./rule-input.ts";
import { judgedInterval } from "./signed-interval.ts";

type MovesWith = Extract<ResolvedRule, { claims: "moves-with" }>;

/** The claimed amount as a slope in SI: as it stands, or spread over the middle half of X. */
function claimedSlope(rule: MovesWith, { table, mask }: RuleInput): number {
  if (!rule.byAtLeast) return 0;
  if (rule.byAtLeast.per === "slope") return Math.abs(rule.byAtLeast.value);
  const there = rule.x.values.filter(
    (value, row) => mask[row] === 1 && !table.leftOut.has(row) && Number.isFinite(value),
  );
  const middleHalf = quantile(there, 0.75) - quantile(there, 0.25);
  return middleHalf > 0 ? Math.abs(rule.byAtLeast.value) / middleHalf : 0;
}

/** The verdict on one set of rows. Declines where the relation itself does. */
export function judgeMovesWith(rule: MovesWith, input: RuleInput): JudgementOutcome {
  const relation = answerRelation({
    table: input.table,
    y: rule.y,
    x: [rule.x],
    allowingFor: rule.within ? [rule.within] : [],
    within: null,
    powerLaw: false,
    mask: input.mask,
    by: null,
    asked: input.asked,
  });
  if (relation.kind === "refused")
    return { ok: false, refusal: { code: relation.code, facts: relation.facts } as never };
  const slope = relation.estimate[0];
  if (!slope) return declined("not-finite", { name: "the slope" });
  const direction = rule.xMoves === rule.yMoves ? 1 : -1;
  const turned = ({ value, low, high }: Estimate) => ({
    value: direction * value,
    low: Math.min(direction * low, direction * high),
    high: Math.max(direction * low, direction * high),
  });
  const bound = claimedSlope(rule, input) / scaleFactor(slope.unit);
  const among = intervalAmong(slope, input.asked);
  const judged = judgedInterval(turned(slope), turned(among), bound, relation.rows.used.length);
  const words = amountInWords(slope.value, slope.standardError ?? null, slope.unit);
  return succeeded({
    ...judged,
    shows: `the ${slope.name} is ${words}`,
    estimate: [slope],
    checks: relation.checks,
    cautions: relation.cautions,
    rows: relation.rows,
    columns: [rule.y, rule.x],
    methodId: relation.method.id,
  });
}
