// "G1 has more Y than G2 [by at least Q]": the comparison of the two groups, set against zero or the amount claimed.
import { declined, type Refusal, succeeded } from "../../base/index.ts";
import { answerComparison, columnInWords, intervalAmong } from "../../questions/index.ts";
import { amountInWords, scaleFactor } from "../../units/index.ts";
import type { JudgementOutcome } from "../judgement.ts";
import type { ResolvedRule } from "../resolved-rule.ts";
import type { RuleInput } from "./rule-input.ts";
import { judgedInterval } from "./signed-interval.ts";

type HasMore = Extract<ResolvedRule, { claims: "has-more" }>;

/** How many rows of each of the two groups take part in the rule; other rows do not. */
function twoGroups(rule: HasMore, mask: Uint8Array) {
  const names = rule.groups.kind === "label" ? rule.groups.names : rule.groups.levels;
  const [more, less] = [names.indexOf(rule.more), names.indexOf(rule.less)];
  const groupOf = (row: number) => rule.groups.codes[row] ?? -1;
  const ours = mask.map((chosen, row) => (chosen === 1 && (groupOf(row) === more || groupOf(row) === less) ? 1 : 0));
  const counted = (group: number) =>
    ours.reduce(
      (sum, one, row) => sum + (one === 1 && groupOf(row) === group && Number.isFinite(rule.y.values[row]) ? 1 : 0),
      0,
    );
  return { ours, fewest: Math.min(counted(more), counted(less)), names };
}

export function judgeHasMore(rule: HasMore, { table, mask, asked }: RuleInput): JudgementOutcome {
  const { ours, fewest, names } = twoGroups(rule, mask);
  if (fewest < 2) return declined("too-few-records", { have: fewest, need: 2 });
  const across =
    rule.groups.kind === "label" ? rule.groups : ({ ...rule.groups, kind: "label", names: [...names] } as const);
  const found = answerComparison({ table, y: rule.y, across, mask: ours, by: null, asked });
  if (found.kind === "refused") return declined(found.code as Refusal["code"], found.facts as never);
  const difference = found.estimate.find(({ name }) => name.endsWith(`, ${rule.more} less ${rule.less}`));
  const turned = found.estimate.find(({ name }) => name.endsWith(`, ${rule.less} less ${rule.more}`));
  const base = difference ?? turned;
  if (base === undefined) return declined("too-few-records", { have: fewest, need: 2 });
  const shown = difference ?? ({ ...base, value: -base.value, low: -base.high, high: -base.low } as const);
  const name = `difference of ${columnInWords(rule.y)}, ${rule.more} less ${rule.less}`;
  const factor = scaleFactor(rule.y.unit);
  const among = intervalAmong(shown, asked);
  const judged = judgedInterval(shown, among, (rule.byAtLeast?.value ?? 0) / factor, found.rows.used.length);
  const means = found.estimate.filter((each) => each.name.startsWith("mean "));
  return succeeded({
    ...judged,
    shows: `the ${columnInWords(rule.y)} of ${rule.more} less that of ${rule.less} is ${amountInWords(shown.value, shown.standardError ?? null, rule.y.unit)}, ${found.rows.used.length} records`,
    estimate: [{ ...shown, name }, ...means],
    checks: found.checks,
    cautions: found.cautions,
    rows: found.rows,
    columns: [rule.y, rule.groups],
    methodId: found.method.id,
  });
}
