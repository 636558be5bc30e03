// "X and Y are the same within Q": the mean difference of pairs lies inside the margin at 90 % (two one-sided tests at 5 %).
import { declined, succeeded } from "../../base/index.ts";
import { mean, standardDeviation, tQuantile } from "../../numerics/index.ts";
import { columnInWords } from "../../questions/index.ts";
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
  const half = tQuantile(0.5 + LEVEL / 2, used.length - 1) * standardError;
  const margin = rule.tolerance.value;
  const inside = difference - half >= -margin && difference + half <= margin;
  const outside = difference - half > margin || difference + half < -margin;
  const factor = scaleFactor(rule.tolerance.unit);
  return succeeded({
    verdict: inside ? "kept" : outside ? "broken" : "cannot-tell",
    shows: `the mean difference is ${amountInWords(difference / factor, standardError > 0 ? standardError / factor : null, rule.tolerance.unit)}`,
    more: inside || outside ? null : recordsToSettle(used.length, half, Math.abs(margin - Math.abs(difference))),
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
