import type { QuantityColumn } from "../../columns/index.ts";
import { drawToFront, generatorFromSeed, leastSquares } from "../../numerics/index.ts";
import { correlation } from "../fits/correlation.ts";
import { type PlaceAmongDraws, placeAmongDraws } from "../resampling/place-among-draws.ts";
import { usualSeed } from "../resampling/usual-seed.ts";
import { errorsOf } from "./errors-of.ts";
import type { RelationDesign } from "./relation-design.ts";
import type { RelationInput } from "./relation-input.ts";

const DRAWS = 199;
/** More records than this tell the share of arithmetic no better, and cost time. */
const MOST = 500;

/** ln of a measured column and the exponent d ln(computed) / d ln(measured) at each of some rows; null where one is not above zero or no error is stated. */
function powerIn(computed: QuantityColumn, source: QuantityColumn, rows: Int32Array) {
  const adds = errorsOf(computed).get(source.name)?.values;
  if (!adds || !source.uncertainty) return null;
  const [logs, exponents] = [new Float64Array(rows.length), new Float64Array(rows.length)];
  for (const [i, row] of rows.entries()) {
    const [value, of] = [source.values[row] as number, computed.values[row] as number];
    logs[i] = Math.log(value);
    exponents[i] = (((adds[row] as number) / (source.uncertainty[row] as number)) * value) / of;
    if (!(value > 0 && of > 0) || !Number.isFinite(exponents[i])) return null;
  }
  return { logs, exponents };
}

/**
 * Deals out everything but the shared measurements: each record keeps those and takes the rest of the computed column (y, or x where y is measured) from
 * another record, as a product of powers. Exact for products of powers, to first order in the logarithm else. `sources`: measured columns that both
 * rest on. null where they have no stated uncertainty or are not above zero. Deterministic. Source: K. Pearson (1897), Proc. Royal Society 60, 489-498.
 */
export function dealtNull(
  input: RelationInput,
  design: RelationDesign,
  which: number,
  sources: readonly QuantityColumn[],
): PlaceAmongDraws | null {
  const [x, place, n] = [input.x[which], design.slopes[which], design.y.length];
  if (!x || place === undefined) return null;
  const deals = input.y.origin.from === "formula" ? "y" : "x";
  const [computed, other] = deals === "y" ? [input.y, x] : [x, input.y];
  const size = Math.min(n, MOST);
  const at = Int32Array.from({ length: size }, (_, i) => Math.floor((i * n) / size));
  const rows = at.map((i) => design.sample.index[i] as number);
  const powers = sources.flatMap((source) => powerIn(computed, source, rows) ?? []);
  if (powers.length < sources.length || powers.length === 0) return null;
  const others = design.columns
    .filter((_, j) => j !== place)
    .map((column) => (at.length === n ? column : Float64Array.from(at, (i) => column[i] as number)));
  const term = (values: Float64Array) => (input.powerLaw ? values.map(Math.log) : values);
  const left = (values: Float64Array) => leastSquares(others, term(values)).residuals;
  const valuesOf = (column: QuantityColumn) => Float64Array.from(rows, (row) => column.values[row] as number);
  const [own, kept] = [valuesOf(computed), left(valuesOf(other))];
  const generator = generatorFromSeed(usualSeed).split("dealt out");
  const [deck, words] = [Float64Array.from({ length: size }, (_, i) => i), new Uint32Array(size)];
  const drawn = Float64Array.from({ length: DRAWS }, () => {
    drawToFront(deck, size, generator, words);
    const dealt = Float64Array.from(deck, (from, i) => {
      const power = powers.reduce(
        (sum, { logs, exponents }) =>
          sum + (exponents[from] as number) * ((logs[i] as number) - (logs[from] as number)),
        0,
      );
      return (own[from] as number) * Math.exp(power);
    });
    return correlation(left(dealt), kept);
  });
  const seen = correlation(left(own), kept);
  const found = placeAmongDraws(drawn, seen);
  return Number.isFinite(seen) && Number.isFinite(found.middle) ? found : null;
}
