import type { Check, Estimate, Finding } from "../../base/index.ts";
import type { ColumnTable, GradeColumn, QuantityColumn } from "../../columns/index.ts";
import { numberInWords, sameDimension, unitForDisplay } from "../../units/index.ts";
import { directionAmong } from "../among-questions.ts";
import { capitalized } from "../capitalized.ts";
import { columnInWords } from "../column-in-words.ts";
import { commonCautions } from "../common-cautions.ts";
import { finding } from "../finding.ts";
import { intervalInWords } from "../interval-in-words.ts";
import { blandAltman } from "../methods/bland-altman.ts";
import { kappa } from "../methods/kappa.ts";
import { refused } from "../refused.ts";
import { sampled, sampleFromColumns } from "../sample-from-columns.ts";
import { sharedClusters } from "../shared-clusters.ts";
import { shownEstimate } from "../shown-estimate.ts";
import { agreeGrades } from "./agree-grades.ts";
import { agreementLimits } from "./agreement-limits.ts";

/** `A beside B`, resolved to columns. */
export type AgreementInput = {
  readonly table: ColumnTable;
  readonly a: QuantityColumn | GradeColumn;
  readonly b: QuantityColumn | GradeColumn;
  readonly mask: Uint8Array | null;
  readonly by: string | null;
  readonly asked: number;
};

/** Two ways of measuring the same pieces: mean difference and limits of agreement; two people's grades: weighted kappa. */
export function answerAgreement(input: AgreementInput): Finding {
  const { a, b, table } = input;
  const fitting = a.kind === "grade" ? kappa.id : blandAltman.id;
  if (input.by !== null && input.by !== fitting)
    return refused("out-of-domain", { name: input.by, needed: a.kind === "grade" ? "quantities" : "grades" });
  if (a.kind === "grade" && b.kind === "grade") return agreeGrades({ ...input, a, b });
  if (a.kind === "grade")
    return refused("wrong-kind", { column: columnInWords(a), found: "a grade", needed: "a quantity, like the other" });
  if (b.kind === "grade")
    return refused("wrong-kind", { column: columnInWords(b), found: "a grade", needed: "a quantity, like the other" });
  if (!sameDimension(a.dimension, b.dimension))
    return refused("wrong-dimension", {
      name: columnInWords(b),
      found: unitForDisplay(b.unit) || "plain numbers",
      needed: unitForDisplay(a.unit) || "plain numbers",
    });
  const sample = sampleFromColumns(table, [a, b], input.mask);
  const n = sample.rows.length;
  if (n === 0) return refused("no-records", { table: table.name });
  if (n < 3) return refused("too-few-records", { have: n, need: 3 });
  const limits = agreementLimits(sampled(a.values, sample), sampled(b.values, sample));
  if (!(limits.sd > 0))
    return refused("no-spread", { column: `difference of ${columnInWords(a)} and ${columnInWords(b)}` });
  const place = (name: string, value: number, half: number, standardError: number) =>
    shownEstimate(
      { name, value, low: value - half, high: value + half, standardError, degreesOfFreedom: n - 1 },
      a.unit,
      "difference",
    );
  const bias = place("mean difference", limits.bias, limits.biasHalf, limits.biasError);
  const low = place("lower limit of agreement", limits.low, limits.limitHalf, limits.limitError);
  const high = place("upper limit of agreement", limits.high, limits.limitHalf, limits.limitError);
  const estimate: Estimate[] = [bias, low, high];
  const unit = unitForDisplay(a.unit) === "" ? "" : ` ${unitForDisplay(a.unit)}`;
  const figure = (one: Estimate) => numberInWords(one.value, one.standardError ?? null);
  const [nameA, nameB] = [columnInWords(a), columnInWords(b)];
  const says =
    directionAmong(bias, input.asked) === 0
      ? `can't tell yet whether the ${nameA} reads higher or lower than the ${nameB}: the mean difference has a 95 % interval of ${intervalInWords(bias)}`
      : `the ${nameA} reads ${numberInWords(Math.abs(bias.value), bias.standardError ?? null)}${unit} ${bias.value > 0 ? "higher" : "lower"} than the ${nameB} on average (95 % interval ${intervalInWords(bias)})`;
  const trendP = limits.trend?.p[1] ?? Number.NaN;
  const trend: Check = {
    id: "same-difference-throughout",
    name: "the difference does not change with size",
    value: trendP,
    limit: 0.05,
    passed: trendP >= 0.05,
    sentence:
      trendP >= 0.05
        ? "The difference does not change with the size of the reading."
        : "The difference changes with the size of the reading, so one mean difference describes it only roughly.",
  };
  return finding({
    kind: "agreement",
    table,
    sentence: `${capitalized(says)}; of single differences 95 in 100 lie between ${figure(low)} and ${figure(high)}${unit}, ${n} pieces.`,
    estimate,
    rows: { used: sample.rows, setAside: sample.setAside },
    checks: [trend],
    cautions: commonCautions(sample, input.asked, 10, sharedClusters(table, sample)),
    method: blandAltman,
    chosenBecause: "both columns measure the same quantity of the same pieces",
    claims: [bias],
    asked: input.asked,
    columns: [a, b],
  });
}
