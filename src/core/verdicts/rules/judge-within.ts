// "Y stays within Q of EXPR" claims it for 19 in 20 instruments; "Y is EXPR give or take Q" claims it for two in three.
import { declined, type Estimate, succeeded } from "../../base/index.ts";
import { amountInWords, scaleFactor } from "../../units/index.ts";
import type { JudgementOutcome } from "../judgement.ts";
import type { ResolvedRule } from "../resolved-rule.ts";
import { comparedRows } from "./compared-rows.ts";
import type { RuleInput } from "./rule-input.ts";
import { shareEstimate } from "./share-estimate.ts";
import { judgedInterval } from "./signed-interval.ts";

type Within = Extract<ResolvedRule, { claims: "stays-within" | "give-or-take" }>;

/** The share claimed by the words: "stays" is nearly always; "give or take" is one standard uncertainty, two in three. */
const CLAIMED = { "stays-within": 0.95, "give-or-take": 2 / 3 } as const;

export function judgeWithin(rule: Within, input: RuleInput): JudgementOutcome {
  const { differences, used, setAside } = comparedRows(rule.y, rule.of, input);
  if (used.length < 1) return declined("too-few-records", { have: 0, need: 1 });
  const inside = differences.filter((difference) => Math.abs(difference) <= rule.tolerance.value * (1 + 1e-12)).length;
  const tolerance = amountInWords(rule.tolerance.value / scaleFactor(rule.tolerance.unit), null, rule.tolerance.unit);
  const [share, among] = [1, input.asked].map((asked) =>
    shareEstimate(`share within ${tolerance}`, inside, used.length, asked),
  ) as [Estimate, Estimate];
  const judged = judgedInterval(share, among, CLAIMED[rule.claims], used.length);
  const furthest = differences.reduce((most, difference) => Math.max(most, Math.abs(difference)), 0);
  return succeeded({
    ...judged,
    shows: `${inside} of ${used.length} lie within ${tolerance}, the furthest ${amountInWords(furthest / scaleFactor(rule.tolerance.unit), null, rule.tolerance.unit)} away`,
    estimate: [share],
    checks: [],
    cautions: [],
    rows: { used, setAside },
    columns: [rule.y, rule.of],
    methodId: "proportion-interval",
  });
}
