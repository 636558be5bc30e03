// "G1 has more Y than G2 [by at least Q]": Welch's difference of two means against zero or the amount claimed.
import { declined, type RowRef, type SetAside, succeeded } from "../../base/index.ts";
import { amountInWords, scaleFactor } from "../../units/index.ts";
import type { JudgementOutcome } from "../judgement.ts";
import { differenceInterval, welchDifference } from "../methods/equivalence.ts";
import type { ResolvedRule } from "../resolved-rule.ts";
import type { RuleInput } from "./rule-input.ts";
import { judgedInterval } from "./signed-interval.ts";

type HasMore = Extract<ResolvedRule, { claims: "has-more" }>;
const LEVEL = 0.95;

function groupValues(rule: HasMore, { table, mask }: RuleInput) {
  const names = rule.groups.kind === "label" ? rule.groups.names : rule.groups.levels;
  const code = { more: names.indexOf(rule.more), less: names.indexOf(rule.less) };
  const more: number[] = [];
  const less: number[] = [];
  const used: RowRef[] = [];
  const setAside: SetAside[] = [];
  for (let row = 0; row < table.rowCount; row++) {
    const ref = table.rows[row];
    const group = rule.groups.codes[row] ?? -1;
    if (mask[row] !== 1 || !ref || (group !== code.more && group !== code.less)) continue;
    const value = rule.y.values[row] ?? Number.NaN;
    const left = table.leftOut.get(row);
    if (left !== undefined) setAside.push({ row: ref, why: left });
    else if (!Number.isFinite(value)) setAside.push({ row: ref, why: "missing" });
    else {
      (group === code.more ? more : less).push(value);
      used.push(ref);
    }
  }
  return { more, less, used, setAside };
}

export function judgeHasMore(rule: HasMore, input: RuleInput): JudgementOutcome {
  const { more, less, used, setAside } = groupValues(rule, input);
  if (more.length < 2 || less.length < 2) return declined("too-few-records", { have: Math.min(more.length, less.length), need: 2 });
  const found = welchDifference(more, less);
  if (!found.ok) return found;
  const factor = scaleFactor(rule.y.unit);
  const interval = differenceInterval(found.value, LEVEL);
  const judged = judgedInterval({ value: found.value.difference, ...interval }, rule.byAtLeast?.value ?? 0, used.length);
  return succeeded({
    verdict: judged.verdict,
    shows: `${rule.more} less ${rule.less} is ${amountInWords(found.value.difference / factor, found.value.standardError / factor, rule.y.unit)}, from ${more.length} and ${less.length} records`,
    more: judged.more,
    estimate: [
      {
        name: `${rule.y.name.replaceAll("_", " ")} of ${rule.more} less ${rule.less}`,
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
    methodId: "equivalence",
  });
}
