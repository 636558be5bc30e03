// "X and Y are the same within Q": the mean difference of pairs lies inside the margin at 90 % (two one-sided tests at 5 %).
import { declined, succeeded, type Verdict } from "../../base/index.ts";
import { mean, standardDeviation, tQuantile } from "../../numerics/index.ts";
import { columnInWords, levelAmong } from "../../questions/index.ts";
import { amountInWords, scaleFactor } from "../../units/index.ts";
import type { JudgementOutcome } from "../judgement.ts";
import { recordsToSettle } from "../records-to-settle.ts";
import type { ResolvedRule } from "../resolved-rule.ts";
import { comparedRows } from "./compared-rows.ts";
import type { RuleInput } from "./rule-input.ts";

type SameWithin = Extract<ResolvedRule, { claims: "same-within" }>;
const LEVEL = 0.9;

/** Kept: the interval lies inside ±Q; broken: it lies wholly outside. Source: Schuirmann (1987), J. Pharmacokinet. Biopharm. 15, 657–680. */
export function judgeSameWithin(rule: SameWithin, input: RuleInput): JudgementOutcome {
  const { differences, used, setAside } = comparedRows(rule.a, rule.b, input);
  if (used.length < 3) return declined("too-few-records", { have: used.length, need: 3 });
  const difference = mean(differences);
  const standardError = standardDeviation(differences) / Math.sqrt(used.length);
  const [half, among] = [1, input.asked].map(
    (asked) => tQuantile(0.5 + levelAmong(asked, LEVEL) / 2, used.length - 1) * standardError,
  ) as [number, number];
  const margin = rule.tolerance.value;
  const judgedBy = (reach: number): Verdict =>
    Math.abs(difference) + reach <= margin ? "kept" : Math.abs(difference) - reach > margin ? "broken" : "cannot-tell";
  const verdict = judgedBy(among);
  const factor = scaleFactor(rule.tolerance.unit);
  return succeeded({
    verdict,
    alone: judgedBy(half),
    shows: `the mean difference is ${amountInWords(difference / factor, standardError > 0 ? standardError / factor : null, rule.tolerance.unit)}`,
    more:
      verdict === "cannot-tell" ? recordsToSettle(used.length, among, Math.abs(margin - Math.abs(difference))) : null,
    estimate: [
      {
        name: `mean of ${columnInWords(rule.a)} less ${columnInWords(rule.b)}`,
        value: difference / factor,
        low: (difference - half) / factor,
        high: (difference + half) / factor,
        level: LEVEL,
        unit: rule.tolerance.unit,
        standardError: standardError / factor,
        degreesOfFreedom: used.length - 1,
      },
    ],
    checks: [],
    cautions: [],
    rows: { used, setAside },
    columns: [rule.a, rule.b],
    methodId: "equivalence",
  });
}
