import type { Estimate, Finding } from "../../base/index.ts";
import type { GradeColumn } from "../../columns/index.ts";
import { numberInWords } from "../../units/index.ts";
import { directionAmong } from "../among-questions.ts";
import { askedByName } from "../asked-by-name.ts";
import { columnInWords } from "../column-in-words.ts";
import { commonCautions } from "../common-cautions.ts";
import { finding } from "../finding.ts";
import { kruskalWallis, rankTest } from "../methods/kruskal-wallis.ts";
import { refused } from "../refused.ts";
import type { Sample } from "../sample-from-columns.ts";
import { sampled } from "../sample-from-columns.ts";
import { sampleGroups } from "../sample-groups.ts";
import { sharedClusters } from "../shared-clusters.ts";
import { chanceAbove } from "./chance-above.ts";
import type { ComparisonInput } from "./comparison-input.ts";

/** Grades across groups: their order alone counts. For each pair, the chance that one of the second is graded above one of the first. */
export function compareGrades(input: ComparisonInput, y: GradeColumn, sample: Sample): Finding {
  if (input.by !== null && input.by !== kruskalWallis.id)
    return refused("out-of-domain", { name: input.by, needed: "a quantity; grades have an order but no distances" });
  const { names, codes } = sampleGroups(input.across, sample);
  const grades = sampled(y.codes, sample);
  const test = rankTest(grades, codes, names.length);
  if (!Number.isFinite(test.H)) return refused("no-spread", { column: columnInWords(y) });
  const count = (names.length * (names.length - 1)) / 2;
  const pairs: { estimate: Estimate; above: string; below: string }[] = [];
  for (let first = 0; first < names.length; first++)
    for (let second = first + 1; second < names.length; second++) {
      const of = (group: number) => grades.filter((_, i) => codes[i] === group);
      const forward = chanceAbove(of(first), of(second), 0.05 / count);
      const up = forward.value >= 0.5;
      const { value, low, high } = up ? forward : chanceAbove(of(second), of(first), 0.05 / count);
      const [above, below] = [names[up ? second : first] ?? "", names[up ? first : second] ?? ""];
      pairs.push({
        above,
        below,
        estimate: { name: `chance that ${above} is graded above ${below}`, value, low, high, level: 0.95, unit: "1" },
      });
    }
  pairs.sort((a, b) => b.estimate.low - a.estimate.low);
  const lead = pairs[0];
  if (!lead) return refused("too-few-records", { have: sample.rows.length, need: sample.rows.length + 4 });
  const { estimate, above, below } = lead;
  const words = (share: number) => numberInWords(Math.round(100 * share), null);
  const claim = {
    ...estimate,
    name: `${estimate.name}, less one half`,
    value: estimate.value - 0.5,
    low: estimate.low - 0.5,
    high: estimate.high - 0.5,
  };
  const sentence =
    directionAmong(claim, input.asked) > 0
      ? `A piece of ${above} is graded above one of ${below} for ${columnInWords(y)} ${words(estimate.value)} times in 100, ties counted half (95 % interval ${words(estimate.low)} to ${words(estimate.high)}), ${sample.rows.length} records.`
      : `Can't tell yet whether ${columnInWords(y)} differs across ${columnInWords(input.across)}: ${above} is graded above ${below} ${words(estimate.value)} times in 100, but the 95 % interval runs from ${words(estimate.low)} to ${words(estimate.high)}, ${sample.rows.length} records.`;
  return finding({
    kind: "comparison",
    table: input.table,
    sentence,
    estimate: pairs.map((pair) => pair.estimate),
    rows: { used: sample.rows, setAside: sample.setAside },
    checks: [
      {
        id: "any-difference",
        name: "any difference at all (Kruskal–Wallis)",
        value: test.p,
        limit: 0.05,
        passed: test.p < 0.05,
        sentence:
          test.p < 0.05
            ? "The groups as a whole are graded differently."
            : "The groups as a whole are not graded differently, as far as can be told.",
      },
    ],
    cautions: commonCautions(sample, input.asked, 10, sharedClusters(input.table, sample)),
    method: kruskalWallis,
    chosenBecause: input.by ? askedByName : "grades have an order but no distances",
    columns: [y, input.across],
    claims: [claim],
    asked: input.asked,
  });
}
