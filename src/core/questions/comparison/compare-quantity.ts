import type { Caution, Check, Estimate, Finding } from "../../base/index.ts";
import type { QuantityColumn } from "../../columns/index.ts";
import { median, tQuantile } from "../../numerics/index.ts";
import { amountInWords, numberInWords, unitForDisplay } from "../../units/index.ts";
import { directionAmong } from "../among-questions.ts";
import { columnInWords } from "../column-in-words.ts";
import { commonCautions } from "../common-cautions.ts";
import { finding } from "../finding.ts";
import { groupMoments } from "../groups/group-moments.ts";
import { welchAnova } from "../groups/welch-anova.ts";
import { intervalInWords } from "../interval-in-words.ts";
import { spreadTest } from "../methods/one-way-welch.ts";
import { moreInWords } from "../more-in-words.ts";
import { refused, refusedAs } from "../refused.ts";
import type { Sample } from "../sample-from-columns.ts";
import { sampled } from "../sample-from-columns.ts";
import { sampleGroups } from "../sample-groups.ts";
import { sharedClusters } from "../shared-clusters.ts";
import { shownEstimate } from "../shown-estimate.ts";
import type { ComparisonInput } from "./comparison-input.ts";
import { groupDifferences } from "./group-differences.ts";

const FEW = 4;

/** The pair whose difference stands out most: the largest of those that are sure as one of `asked` questions, or the surest where none is. */
function leading(pairs: readonly Estimate[], asked: number): Estimate | undefined {
  const size = (pair: Estimate) => Math.abs(pair.value) / (pair.standardError ?? 1);
  const sure = pairs
    .filter((pair) => directionAmong(pair, asked) !== 0)
    .sort((a, b) => Math.abs(b.value) - Math.abs(a.value));
  return sure[0] ?? [...pairs].sort((a, b) => size(b) - size(a))[0];
}

/** A mean as finely as it is known; as it stands where its group has no spread. */
const meanInWords = (mean: Estimate | undefined, unit: string): string =>
  amountInWords(mean?.value ?? 0, mean?.standardError || null, unit).replace(/ ± [^ ]+/, "");

/** Means of groups with intervals, all differences, the sentence of the one that stands out. */
export function compareQuantity(input: ComparisonInput, y: QuantityColumn, sample: Sample): Finding {
  const { names, codes, counts } = sampleGroups(input.across, sample);
  const values = sampled(y.values, sample);
  const moments = groupMoments(values, codes, names.length);
  if (moments.variances.filter((value) => value > 0).length === 0)
    return refused("no-spread", { column: columnInWords(y) });
  const shared = sharedClusters(input.table, sample);
  const compared = groupDifferences({ y: values, codes, moments, shared }, input.by);
  if (!compared.ok) return refusedAs(compared.refusal);
  const differences = compared.value;
  const means = names.map((name, g) => {
    const se = Math.sqrt((moments.variances[g] as number) / (counts[g] as number));
    const half = se * tQuantile(0.975, (counts[g] as number) - 1);
    const mean = moments.means[g] as number;
    return shownEstimate(
      {
        name: `mean ${columnInWords(y)} of ${name}`,
        value: mean,
        low: mean - half,
        high: mean + half,
        standardError: se,
        degreesOfFreedom: (counts[g] as number) - 1,
      },
      y.unit,
      "level",
    );
  });
  const pairs = differences.pairs.map(({ first, second, ...pair }) => {
    const up = pair.value >= 0;
    const turned = up ? pair : { ...pair, value: -pair.value, low: -pair.high, high: -pair.low };
    return shownEstimate(
      {
        ...turned,
        name: `difference of ${columnInWords(y)}, ${names[up ? second : first]} less ${names[up ? first : second]}`,
      },
      y.unit,
      "difference",
    );
  });
  const lead = leading(pairs, input.asked);
  if (!lead) return refused("one-group", { column: columnInWords(input.across), group: names[0] ?? "none" });
  const [more = "", less = ""] = lead.name.split(", ").slice(1).join(", ").split(" less ");
  const told = `${names.map((name, g) => `${name} ${meanInWords(means[g], y.unit)} (${counts[g]})`).join(", ")}`;
  const unit = unitForDisplay(y.unit);
  const sentence =
    directionAmong(lead, input.asked) !== 0
      ? `The ${columnInWords(y)} of ${more} is ${numberInWords(lead.value, lead.standardError ?? null)}${unit === "" ? "" : ` ${unit}`} above that of ${less} (95 % interval ${intervalInWords(lead)}), ${sample.rows.length} records. Means: ${told}.`
      : `Can't tell yet whether the ${columnInWords(y)} differs across ${columnInWords(input.across)}: the difference that stands out most, ${more} less ${less}, has a 95 % interval of ${intervalInWords(lead)}, ${sample.rows.length} records. ${moreInWords(lead.value / (lead.standardError ?? 1), sample.rows.length, names.length, input.asked)}. Means: ${told}.`;
  const cautions: Caution[] = [...commonCautions(sample, input.asked, 10, shared)];
  const smallest = Math.min(...counts);
  if (smallest < FEW && sample.rows.length >= 10)
    cautions.push({ code: "few-records", facts: { have: sample.rows.length, need: FEW * names.length } });
  const checks: Check[] = [];
  const welch = welchAnova(moments);
  if (Number.isFinite(welch.p))
    checks.push({
      id: "any-difference",
      name: "any difference at all (Welch)",
      value: welch.p,
      limit: 0.05,
      passed: welch.p < 0.05,
      sentence:
        welch.p < 0.05
          ? "The groups as a whole differ more than chance would make them."
          : "The groups as a whole do not differ more than chance would make them.",
    });
  const spread = spreadTest(moments, median);
  if (Number.isFinite(spread.p))
    checks.push({
      id: "even-spread",
      name: "equal spread of the groups",
      value: spread.p,
      limit: 0.05,
      passed: spread.p >= 0.05,
      sentence:
        spread.p >= 0.05
          ? "The groups scatter alike."
          : "The groups do not scatter alike; each is judged by its own spread.",
    });
  return finding({
    kind: "comparison",
    table: input.table,
    sentence,
    estimate: [...means, ...pairs],
    rows: { used: sample.rows, setAside: sample.setAside },
    checks,
    cautions,
    method: differences.method,
    chosenBecause: differences.because,
    claims: [lead],
    asked: input.asked,
    columns: [y, input.across],
  });
}
