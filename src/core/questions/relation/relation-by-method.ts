import type { Estimate, Finding } from "../../base/index.ts";
import type { QuantityColumn } from "../../columns/index.ts";
import { median } from "../../numerics/index.ts";
import { numberInWords, quotientUnit, scaleFactor } from "../../units/index.ts";
import { directionAmong } from "../among-questions.ts";
import { askedByName } from "../asked-by-name.ts";
import { columnInWords } from "../column-in-words.ts";
import { commonCautions } from "../common-cautions.ts";
import { finding } from "../finding.ts";
import { intervalInWords } from "../interval-in-words.ts";
import { refused, refusedAs } from "../refused.ts";
import { sampled } from "../sample-from-columns.ts";
import { seedOf } from "../seed-of.ts";
import { sharedClusters } from "../shared-clusters.ts";
import { groupsFound } from "./groups-found.ts";
import type { RelationDesign } from "./relation-design.ts";
import type { RelationInput } from "./relation-input.ts";
import { relationMethods } from "./relation-methods.ts";
import { sharedErrors } from "./shared-errors.ts";
import { sharedFound } from "./shared-found.ts";
import { slopeClause } from "./slope-clause.ts";

/** Standard uncertainties at the sample's rows in the column's unit, those unknown replaced by the median; null when none is known. */
function uncertainties(column: QuantityColumn, design: RelationDesign): Float64Array | null {
  const own = column.uncertainty
    ? sampled(column.uncertainty, design.sample).map((u) => u / scaleFactor(column.unit))
    : new Float64Array();
  const known = own.filter((u) => u > 0);
  return known.length === 0 ? null : own.map((u) => (u > 0 ? u : median(known)));
}

/** The correlation of the two errors of each record, where both columns rest on one measurement; nothing where they do not. */
function tiedErrors(input: RelationInput, design: RelationDesign, ux: Float64Array, uy: Float64Array) {
  const errors = sharedErrors(input, design, 0);
  const [toX, toY] = [scaleFactor(input.x[0]?.unit ?? "1"), scaleFactor(input.y.unit)];
  const r = ux.map((u, i) =>
    errors.reduce(
      (sum, { x, y }) => sum + ((x[i] as number) / toX / u) * ((y[i] as number) / toY / (uy[i] as number)),
      0,
    ),
  );
  return errors.length > 0 ? { r: r.map((each) => Math.max(-0.999, Math.min(0.999, each))) } : {};
}

/** `Y against X by METHOD` for the methods that are not least squares: one x, nothing allowed for. Refuses where the method itself does. */
export function relationByMethod(input: RelationInput, design: RelationDesign, by: string): Finding {
  const chosen = relationMethods.get(by);
  const x = input.x[0];
  if (!chosen || !x || input.x.length !== 1 || design.groups || input.allowingFor.length > 0)
    return refused("out-of-domain", { name: by, needed: "one explaining column, with nothing allowed for" });
  const shown = (column: QuantityColumn) =>
    sampled(column.values, design.sample).map((value) =>
      input.powerLaw ? Math.log(value) : value / scaleFactor(column.unit),
    );
  const [ux, uy] = [uncertainties(x, design), uncertainties(input.y, design)];
  if (chosen.usesErrors && (!ux || !uy || input.powerLaw))
    return refused("out-of-domain", { name: by, needed: "an uncertainty for both columns and no power law" });
  const weights =
    ux && uy
      ? {
          wx: ux.map((u) => 1 / (u * u)),
          wy: uy.map((u) => 1 / (u * u)),
          variance_ratio: (median(uy) / median(ux)) ** 2,
          ...tiedErrors(input, design, ux, uy),
        }
      : {};
  const shared = sharedClusters(input.table, design.sample);
  const drawn = shared && chosen.method.inputs.cluster ? { cluster: Array.from(shared.codes, String) } : {};
  const asked = { x: shown(x), y: shown(input.y), ...weights, ...drawn, ...chosen.asks };
  const outcome = chosen.method.run(asked);
  if (!outcome.ok) return refusedAs(outcome.refusal);
  const { value, low, high, error } = chosen.read(outcome.value, design.sample.rows.length);
  if (typeof value !== "number" || typeof low !== "number" || typeof high !== "number")
    return refused("out-of-domain", { name: by, needed: "records from which it can give an interval: more of them" });
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
  const groups = groupsFound(input, design);
  const ancestors = sharedFound(input, design, [estimate]);
  const sure = directionAmong(estimate, input.asked) !== 0;
  const records = `${design.sample.rows.length} records`;
  const says = isSlope
    ? `${slopeClause({ ...estimate, standardError: (high - low) / 4 }, input.y, x, input.powerLaw)} (95 % interval ${intervalInWords(estimate)})`
    : `${yWords} ${value < 0 ? "falls" : "rises"} with ${xWords}, correlation ${numberInWords(value, (high - low) / 4)} (95 % interval ${intervalInWords(estimate)})`;
  return finding({
    kind: "relation",
    table: input.table,
    estimate: [estimate],
    rows: { used: design.sample.rows, setAside: design.sample.setAside },
    cautions: [
      ...commonCautions(design.sample, input.asked, 10, shared),
      ...ancestors.cautions,
      ...groups.cautions,
      ...(chosen.method.cautions?.(asked, outcome.value) ?? []),
    ],
    checks: [...groups.checks, ...ancestors.checks],
    method: chosen.method,
    chosenBecause: askedByName,
    claims: [estimate],
    asked: input.asked,
    ...(ancestors.seed === undefined ? {} : { seed: ancestors.seed }),
    ...seedOf(outcome.value),
    columns: [input.y, x],
    sentence: `${
      sure
        ? `The ${says}, ${records}.`
        : `Can't tell yet whether the ${yWords} rises or falls with ${xWords} (95 % interval of the ${isSlope ? "slope" : "correlation"} ${intervalInWords(estimate)}), ${records}.`
    }${ancestors.sentence}`,
  });
}
