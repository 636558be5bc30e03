// A unit ready for use: simple or compound, with its exact factor.
import { power as powerOf } from "../base/index.ts";
import type { Dimension, Rational } from "./dimension.ts";
import { dimensionless, divideDimensions, multiplyDimensions, raiseDimension } from "./dimension.ts";
import type { UnitPart } from "./unit-parts.ts";
import { codeOfParts } from "./unit-parts.ts";
import type { UnitRecord } from "./unit-record.ts";

/** SI value = value * factor + offset. */
export type Unit = {
  /** Canonical spelling: UCUM codes joined by `.` and `/` ("kg/m3"). "1" where there is no unit. */
  readonly code: string;
  readonly dimension: Dimension;
  /** SI units in one of it, the double nearest to the exact ratio. */
  readonly factor: number;
  /** How many of it make one SI unit, the double nearest to the exact ratio. */
  readonly inverse: number;
  /** Not 0 only for a temperature on a scale. Within a compound such a unit means a difference. */
  readonly offset: number;
  readonly source: string;
};

type Exact = { readonly above: bigint; readonly below: bigint; readonly beside: number };

const common = (a: bigint, b: bigint): bigint => (b === 0n ? a : common(b, a % b));
const exact = (above: bigint, below: bigint, beside: number): Exact => {
  const shared = common(above, below);
  return { above: above / shared, below: below / shared, beside };
};
const times = (a: Exact, b: Exact): Exact => exact(a.above * b.above, a.below * b.below, a.beside * b.beside);
const inverted = (a: Exact): Exact => ({ above: a.below, below: a.above, beside: 1 / a.beside });

function raised(record: UnitRecord, [n, d]: Rational): Exact {
  const beside = record.irrational ?? 1;
  const base = exact(BigInt(record.ratio[0]), BigInt(record.ratio[1]), beside);
  if (d !== 1) return { above: 1n, below: 1n, beside: powerOf((record.ratio[0] / record.ratio[1]) * beside, n / d) };
  const size = BigInt(Math.abs(n));
  const power = exact(base.above ** size, base.below ** size, powerOf(beside, Math.abs(n)));
  return n < 0 ? inverted(power) : power;
}

function scaleOf(parts: readonly UnitPart[]): { readonly scale: Exact; readonly dimension: Dimension } {
  let scale: Exact = { above: 1n, below: 1n, beside: 1 };
  let dimension = dimensionless;
  for (const part of parts) {
    const inner =
      "bracket" in part
        ? scaleOf(part.bracket)
        : { scale: raised(part.unit, part.exponent), dimension: raiseDimension(part.unit.dimension, part.exponent) };
    scale = times(scale, part.below ? inverted(inner.scale) : inner.scale);
    dimension = part.below
      ? divideDimensions(dimension, inner.dimension)
      : multiplyDimensions(dimension, inner.dimension);
  }
  return { scale, dimension };
}

/** The unit that parts make. Factors multiply as exact fractions, and only the result becomes a double: g/cm3 is exactly 1000 kg/m3. */
export function unitFromParts(parts: readonly UnitPart[]): Unit {
  const { scale, dimension } = scaleOf(parts);
  const only = parts.length === 1 ? parts[0] : undefined;
  const alone = only && "unit" in only && !only.below && only.exponent[0] === only.exponent[1] ? only.unit : undefined;
  return {
    code: codeOfParts(parts),
    dimension,
    factor: (Number(scale.above) / Number(scale.below)) * scale.beside,
    inverse: Number(scale.below) / Number(scale.above) / scale.beside,
    offset: alone?.offset ?? 0,
    source: alone?.source ?? "product of units",
  };
}
