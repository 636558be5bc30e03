import type { Estimate, Finding, Method, MethodFields } from "../../base/index.ts";
import type { QuantityColumn } from "../../columns/index.ts";
import { median, tQuantile } from "../../numerics/index.ts";
import { numberInWords, quotientUnit, scaleFactor } from "../../units/index.ts";
import { columnInWords } from "../column-in-words.ts";
import { finding } from "../finding.ts";
import { deming } from "../methods/deming.ts";
import { kendall } from "../methods/kendall.ts";
import { pearson } from "../methods/pearson.ts";
import { spearman } from "../methods/spearman.ts";
import { theilSen } from "../methods/theil-sen.ts";
import { york } from "../methods/york.ts";
import { refused } from "../refused.ts";
import { sampled } from "../sample-from-columns.ts";
import { relationCautions } from "./relation-cautions.ts";
import type { RelationDesign } from "./relation-design.ts";
import type { RelationInput } from "./relation-input.ts";
import { directionOf, intervalInWords, slopeClause } from "./slope-clause.ts";

type Interval = { readonly value: unknown; readonly low: unknown; readonly high: unknown; readonly error?: unknown };
type Alone = {
  readonly method: Method;
  readonly is: "slope" | "correlation";
  readonly read: (fields: MethodFields, records: number) => Interval;
};

const wide = (fields: MethodFields, records: number): Interval => {
  const [value, error] = [Number(fields.slope), Number(fields.se_slope)];
  const half = tQuantile(0.975, records - 2) * error;
  return { value, low: value - half, high: value + half, error };
};

/** The methods that answer a question of one x by themselves, and where their interval stands among their fields. */
const alone = new Map<string, Alone>([
  [
    "theil-sen",
    {
      method: theilSen,
      is: "slope",
      read: (fields) => ({ value: fields.slope, low: fields.ci_low, high: fields.ci_high }),
    },
  ],
  ["deming", { method: deming, is: "slope", read: wide }],
  ["york", { method: york, is: "slope", read: wide }],
  [
    "pearson",
    {
      method: pearson,
      is: "correlation",
      read: (fields) => ({ value: fields.r, low: fields.ci95_low, high: fields.ci95_high }),
    },
  ],
  [
    "spearman",
    {
      method: spearman,
      is: "correlation",
      read: (fields) => ({ value: fields.rho, low: fields.ci95_low, high: fields.ci95_high }),
    },
  ],
  [
    "kendall",
    {
      method: kendall,
      is: "correlation",
      read: (fields) => ({ value: fields.tau_b, low: fields.ci95_low, high: fields.ci95_high }),
    },
  ],
]);

/** Standard uncertainties at the sample's rows in the column's unit, those unknown replaced by the median; null when none is known. */
function uncertainties(column: QuantityColumn, design: RelationDesign): Float64Array | null {
  const own = column.uncertainty
    ? sampled(column.uncertainty, design.sample).map((u) => u / scaleFactor(column.unit))
    : new Float64Array();
  const known = own.filter((u) => u > 0);
  return known.length === 0 ? null : own.map((u) => (u > 0 ? u : median(known)));
}

/** `Y against X by METHOD` for the methods that are not least squares: one x, nothing allowed for. Refuses where the method itself does. */
export function relationByMethod(input: RelationInput, design: RelationDesign, by: string): Finding {
  const chosen = alone.get(by);
  const x = input.x[0];
  if (!chosen || !x || input.x.length !== 1 || design.groups || input.allowingFor.length > 0)
    return refused("out-of-domain", { name: by, needed: "one explaining column, with nothing allowed for" });
  const shown = (column: QuantityColumn) =>
    sampled(column.values, design.sample).map((value) =>
      input.powerLaw ? Math.log(value) : value / scaleFactor(column.unit),
    );
  const [ux, uy] = [uncertainties(x, design), uncertainties(input.y, design)];
  if ((by === "york" || by === "deming") && (!ux || !uy || input.powerLaw))
    return refused("out-of-domain", { name: by, needed: "an uncertainty for both columns and no power law" });
  const weights =
    ux && uy
      ? {
          wx: ux.map((u) => 1 / (u * u)),
          wy: uy.map((u) => 1 / (u * u)),
          variance_ratio: (median(uy) / median(ux)) ** 2,
        }
      : {};
  const outcome = chosen.method.run({ x: shown(x), y: shown(input.y), ...weights });
  if (!outcome.ok) return refused(outcome.refusal.code, outcome.refusal.facts as never);
  const { value, low, high, error } = chosen.read(outcome.value, design.sample.rows.length);
  if (typeof value !== "number" || typeof low !== "number" || typeof high !== "number")
    return refused("too-few-records", { have: design.sample.rows.length, need: design.sample.rows.length + 2 });
  const isSlope = chosen.is === "slope";
  const [yWords, xWords] = [columnInWords(input.y), columnInWords(x)];
  const estimate: Estimate = {
    name: isSlope
      ? `${input.powerLaw ? "exponent" : "slope"} of ${yWords} on ${xWords}`
      : `correlation of ${yWords} and ${xWords}`,
    value,
    low,
    high,
    level: 0.95,
    unit: isSlope && !input.powerLaw ? quotientUnit(input.y.unit, x.unit) : "1",
    ...(typeof error === "number" ? { standardError: error } : {}),
  };
  const sure = directionOf(estimate) !== 0;
  const records = `${design.sample.rows.length} records`;
  const says = isSlope
    ? `${slopeClause({ ...estimate, standardError: (high - low) / 4 }, input.y, x, input.powerLaw)} (95 % interval ${intervalInWords(estimate)})`
    : `${yWords} ${value < 0 ? "falls" : "rises"} with ${xWords}, correlation ${numberInWords(value, (high - low) / 4)} (95 % interval ${intervalInWords(estimate)})`;
  return finding({
    kind: "relation",
    table: input.table,
    estimate: [estimate],
    rows: { used: design.sample.rows, setAside: design.sample.setAside },
    cautions: relationCautions(input, design),
    method: chosen.method,
    chosenBecause: "it was asked for by name",
    columns: [input.y, x],
    sentence: sure
      ? `The ${says}, ${records}.`
      : `Can't tell yet whether the ${yWords} rises or falls with ${xWords} (95 % interval of the ${isSlope ? "slope" : "correlation"} ${intervalInWords(estimate)}), ${records}.`,
  });
}
