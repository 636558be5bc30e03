import type { Finding } from "../../base/index.ts";
import { numberInWords, scaleFactor, unitForDisplay } from "../../units/index.ts";
import { directionAmong } from "../among-questions.ts";
import { askedByName } from "../asked-by-name.ts";
import { columnInWords } from "../column-in-words.ts";
import { commonCautions } from "../common-cautions.ts";
import { finding } from "../finding.ts";
import { intervalInWords } from "../interval-in-words.ts";
import { refused, refusedAs } from "../refused.ts";
import type { Sample } from "../sample-from-columns.ts";
import { sampled } from "../sample-from-columns.ts";
import { sampleGroups } from "../sample-groups.ts";
import { seedOf } from "../seed-of.ts";
import { sharedClusters } from "../shared-clusters.ts";
import type { ComparisonInput } from "./comparison-input.ts";
import type { ComparisonMethod } from "./comparison-methods.ts";

/** `Y across G by METHOD` for the methods that compare two groups by a figure of their own. Declines other numbers of groups, and what the method declines. */
export function comparisonByMethod(input: ComparisonInput, sample: Sample, chosen: ComparisonMethod): Finding {
  const { y, across } = input;
  const id = chosen.method.id;
  if (y.kind === "grade" && !chosen.takesGrades)
    return refused("out-of-domain", { name: id, needed: "a quantity; grades have an order but no distances" });
  const { names, codes } = sampleGroups(across, sample);
  const [first = "", second = ""] = names;
  if (names.length !== 2) return refused("out-of-domain", { name: id, needed: "two groups" });
  const values =
    y.kind === "grade"
      ? Float64Array.from(sampled(y.codes, sample))
      : sampled(y.values, sample).map((value) => value / scaleFactor(y.unit));
  const of = (group: number) => values.filter((_, at) => codes[at] === group);
  const asked = { a: of(1), b: of(0) };
  const outcome = chosen.method.run(asked);
  if (!outcome.ok) return refusedAs(outcome.refusal);
  const [value, low, high] = chosen.fields.map((field) => outcome.value[field]);
  if (typeof value !== "number" || typeof low !== "number" || typeof high !== "number")
    return refused("out-of-domain", {
      name: id,
      needed: "records from which it can give an interval: more of them, and for ranks without ties",
    });
  const isUp = value >= 0;
  const [more, less] = isUp ? [second, first] : [first, second];
  const unit = chosen.isAmount && y.kind !== "grade" ? y.unit : "1";
  const estimate = {
    name: chosen.of(more, less),
    value: Math.abs(value),
    low: isUp ? low : -high,
    high: isUp ? high : -low,
    level: 0.95,
    unit,
  };
  const shown = unitForDisplay(unit);
  const figure = `${numberInWords(estimate.value, (estimate.high - estimate.low) / 4)}${shown === "" ? "" : ` ${shown}`}`;
  const says = `the ${estimate.name} is ${figure} for ${columnInWords(y)} (95 % interval ${intervalInWords(estimate)}), ${sample.rows.length} records`;
  return finding({
    kind: "comparison",
    table: input.table,
    sentence:
      directionAmong(estimate, input.asked) === 0
        ? `Can't tell yet whether the ${columnInWords(y)} differs across ${columnInWords(across)}: ${says}.`
        : `${says.charAt(0).toUpperCase()}${says.slice(1)}.`,
    estimate: [estimate],
    rows: { used: sample.rows, setAside: sample.setAside },
    cautions: [
      ...commonCautions(sample, input.asked, 10, sharedClusters(input.table, sample)),
      ...(chosen.method.cautions?.(asked, outcome.value) ?? []),
    ],
    method: chosen.method,
    chosenBecause: askedByName,
    claims: [estimate],
    asked: input.asked,
    ...seedOf(outcome.value),
    columns: [y, across],
  });
}
