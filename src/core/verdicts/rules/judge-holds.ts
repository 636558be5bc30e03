// "when CONDITION, expect CONDITION [in at least N of M]": how often it held, against the share claimed or against how often it holds anyway.
import { declined, type Estimate, type SetAside, succeeded } from "../../base/index.ts";
import { levelAmong, newcombeInterval } from "../../questions/index.ts";
import type { JudgementOutcome } from "../judgement.ts";
import type { ResolvedRule } from "../resolved-rule.ts";
import type { RuleInput } from "./rule-input.ts";
import { shareEstimate } from "./share-estimate.ts";
import { judgedInterval } from "./signed-interval.ts";

type Holds = Extract<ResolvedRule, { claims: "holds" }>;

/** Counts over the rows that take part: where the condition was met, and where it was not. */
function counted(rule: Holds, { table, mask }: RuleInput) {
  const used: number[] = [];
  const setAside: SetAside[] = [];
  let held = 0;
  const otherwise = { tried: 0, held: 0 };
  for (let row = 0; row < table.rowCount; row++) {
    const ref = table.rows[row];
    if (mask[row] !== 1 || !ref) continue;
    const left = table.leftOut.get(row);
    const when = rule.when.holds[row];
    const expect = rule.expect.holds[row];
    if (left !== undefined) setAside.push({ row: ref, why: left });
    else if (when === -1 || expect === -1) setAside.push({ row: ref, why: "missing-value" });
    else if (when === 1) {
      used.push(row);
      held += expect === 1 ? 1 : 0;
    } else {
      otherwise.tried += 1;
      otherwise.held += expect === 1 ? 1 : 0;
    }
  }
  return { used, setAside, held, otherwise };
}

/** Without "in at least N of M" the claim is that it holds more often than where the condition is not met: two shares, each with its own chance. */
export function judgeHolds(rule: Holds, input: RuleInput): JudgementOutcome {
  const { used, setAside, held, otherwise } = counted(rule, input);
  const tried = used.length;
  if (tried < 1) return declined("too-few-records", { have: 0, need: 1 });
  if (!rule.atLeast && otherwise.tried < 1) return declined("one-group", { column: rule.when.words, group: "yes" });
  const share = shareEstimate(`share in which ${rule.expect.words}`, held, tried);
  const excess = (asked: number): Estimate => ({
    name: "the same, less the share of the others",
    ...newcombeInterval([held, tried], [otherwise.held, otherwise.tried], levelAmong(asked)),
    level: levelAmong(asked),
    unit: "1",
  });
  const judged = rule.atLeast
    ? judgedInterval(
        share,
        shareEstimate(share.name, held, tried, input.asked),
        rule.atLeast.hold / rule.atLeast.of,
        tried,
      )
    : judgedInterval(excess(1), excess(input.asked), 0, tried);
  const percent = (value: number) => `${Math.round(100 * value)} %`;
  const against = rule.atLeast
    ? `the rule asks for ${rule.atLeast.hold} of ${rule.atLeast.of}`
    : `it holds in ${otherwise.held} of ${otherwise.tried} of the others anyway`;
  return succeeded({
    ...judged,
    shows: `it held in ${held} of ${tried} (${percent(share.low)} to ${percent(share.high)}), where ${against}`,
    estimate: rule.atLeast ? [share] : [share, excess(1)],
    checks: [],
    cautions: tried < 10 ? [{ code: "few-records", facts: { have: tried, need: 10 } }] : [],
    columns: [],
    rows: { used: used.flatMap((row) => input.table.rows[row] ?? []), setAside },
    methodId: rule.atLeast ? "proportion-interval" : "proportion-difference",
  });
}
