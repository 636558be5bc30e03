// "G1 has more Y than G2 [by at least Q]": Welch's difference of two means against zero or the amount claimed.
import { declined, succeeded } from "../../base/index.ts";
import { columnInWords, sampleFromColumns } from "../../questions/index.ts";
import { amountInWords, scaleFactor } from "../../units/index.ts";
import type { JudgementOutcome } from "../judgement.ts";
import { differenceInterval, meanDifference } from "../methods/equivalence.ts";
import type { ResolvedRule } from "../resolved-rule.ts";
import type { RuleInput } from "./rule-input.ts";
import { judgedInterval } from "./signed-interval.ts";

type HasMore = Extract<ResolvedRule, { claims: "has-more" }>;
const LEVEL = 0.95;

/** The values of the two groups, and the rows that take part. */
function groupValues(rule: HasMore, { table, mask }: RuleInput) {
  const names = rule.groups.kind === "label" ? rule.groups.names : rule.groups.levels;
  const code = { more: names.indexOf(rule.more), less: names.indexOf(rule.less) };
  const groupOf = (row: number) => rule.groups.codes[row] ?? -1;
  const ours = mask.map((chosen, row) =>
    chosen === 1 && (groupOf(row) === code.more || groupOf(row) === code.less) ? 1 : 0,
  );
  const sample = sampleFromColumns(table, [rule.y], ours);
  const values = (group: number) =>
    [...sample.index].filter((row) => groupOf(row) === group).map((row) => rule.y.values[row] ?? Number.NaN);
  return { more: values(code.more), less: values(code.less), used: sample.rows, setAside: sample.setAside };
}

export function judgeHasMore(rule: HasMore, input: RuleInput): JudgementOutcome {
  const { more, less, used, setAside } = groupValues(rule, input);
  if (more.length < 2 || less.length < 2)
    return declined("too-few-records", { have: Math.min(more.length, less.length), need: 2 });
  const found = meanDifference(more, less);
  if (!found.ok) return found;
  const factor = scaleFactor(rule.y.unit);
  const interval = differenceInterval(found.value, LEVEL);
  const judged = judgedInterval(
    { value: found.value.difference, ...interval },
    rule.byAtLeast?.value ?? 0,
    used.length,
  );
  return succeeded({
    verdict: judged.verdict,
    shows: `${rule.more} less ${rule.less} is ${amountInWords(found.value.difference / factor, found.value.standardError / factor, rule.y.unit)}, from ${more.length} and ${less.length} records`,
    more: judged.more,
    estimate: [
      {
        name: `${columnInWords(rule.y)} of ${rule.more} less ${rule.less}`,
        value: found.value.difference / factor,
        low: interval.low / factor,
        high: interval.high / factor,
        level: LEVEL,
        unit: rule.y.unit,
        standardError: found.value.standardError / factor,
        degreesOfFreedom: found.value.degreesOfFreedom,
      },
    ],
    checks: [],
    cautions: used.length < 10 ? [{ code: "few-records", facts: { have: used.length, need: 10 } }] : [],
    rows: { used, setAside },
    columns: [rule.y, rule.groups],
    methodId: "equivalence",
  });
}
