import {
  affineLawLowerTail,
  bracketedRoot,
  firstOrderUncertainty,
  type InputLaw,
  sumLawLowerTail,
} from "../../numerics/index.ts";
import type { KnownInput } from "./known-inputs.ts";
import type { Model } from "./model.ts";
import { taylorJet } from "./taylor-jet.ts";

/** The law of a result where it is known without draws: P(result <= q). */
export type ExactLaw = { readonly lowerTail: (q: number) => number | null; readonly way: string };

/** Places about the estimates at which the model's form is looked at: each input off by some standard uncertainties, unlike amounts. */
function probes(known: readonly KnownInput[]): readonly (readonly number[])[] {
  const place = (sizes: readonly number[]) =>
    known.map(({ law, uncertainty }, i) => law.mean + (sizes[i % sizes.length] as number) * uncertainty);
  return [place([0]), place([0.7, -1.3, 0.4]), place([-2.1, 0.9, 1.7]), place([1.1, 2.3, -0.8])];
}

const isLinear = (model: Model, known: readonly KnownInput[]): boolean =>
  probes(known).every((place) => taylorJet(model, place).hessian.every((one) => one === 0));

/** Half widths of the rectangles that a law is a sum of. */
const rectanglesOf = (law: InputLaw): readonly number[] =>
  law.law === "rectangular" ? [law.halfWidth] : law.law === "triangular" ? [law.halfWidth / 2, law.halfWidth / 2] : [];

function sumLaw(model: Model, known: readonly KnownInput[], covariance: Float64Array): ExactLaw | null {
  const jet = taylorJet(
    model,
    known.map(({ law }) => law.mean),
  );
  if (known.some(({ law }) => law.law === "t" || law.law === "u-shaped")) return null;
  const n = known.length;
  const normals = covariance.map((one, at) =>
    known[Math.floor(at / n)]?.law.law === "normal" && known[at % n]?.law.law === "normal" ? one : 0,
  );
  const sd = firstOrderUncertainty(jet.gradient, normals).standard;
  const halfWidths = known
    .flatMap(({ law }, i) => rectanglesOf(law).map((a) => a * Math.abs(jet.gradient[i] as number)))
    .filter((a) => a > 0);
  if (sd === 0 && halfWidths.length === 0) return null;
  return { lowerTail: (q) => sumLawLowerTail(q - jet.value, sd, halfWidths), way: "law of the sum" };
}

function pairLaw(model: Model, known: readonly KnownInput[]): ExactLaw | null {
  if (known.length !== 2) return null;
  for (const at of [0, 1]) {
    const [own, other] = [known[at], known[1 - at]];
    if (own?.law.law !== "normal" || !(own.law.sd > 0) || !other || !(other.uncertainty > 0)) continue;
    if (!probes(known).every((place) => taylorJet(model, place).hessian[at * 2 + at] === 0)) continue;
    const { mean, sd } = own.law;
    const lowerTail = affineLawLowerTail({ mean, sd }, other.law, (b) => {
      const jet = taylorJet(model, at === 0 ? [mean, b] : [b, mean]);
      const factor = jet.gradient[at] as number;
      return { constant: jet.value - factor * mean, factor };
    });
    if (lowerTail) return { lowerTail, way: `normal law of ${own.name} given ${other.name}, integrated` };
  }
  return null;
}

/**
 * The exact law of a model's result: of a linear model of normal, rectangular and triangular inputs; of two independent inputs of which a normal one
 * enters to the first power (ratio, product, power). Null for others.
 */
export function exactLaw(
  model: Model,
  known: readonly KnownInput[],
  covariance: Float64Array,
  isIndependent: boolean,
): ExactLaw | null {
  if (isLinear(model, known)) return sumLaw(model, known, covariance);
  return isIndependent ? pairLaw(model, known) : null;
}

/** Quantile of an exact law, bracketed about center by steps of scale; null where the law cannot be read there to its accuracy. */
export function exactQuantile({ lowerTail }: ExactLaw, p: number, center: number, scale: number): number | null {
  const off = (q: number) => (lowerTail(q) ?? Number.NaN) - p;
  let [low, high] = [center - 4 * scale, center + 4 * scale];
  for (let round = 0; round < 40 && off(low) > 0; round++) low -= (high - low) / 2;
  for (let round = 0; round < 40 && off(high) < 0; round++) high += (high - low) / 2;
  if (!(off(low) <= 0) || !(off(high) >= 0)) return null;
  const root = bracketedRoot(off, low, high);
  return Math.abs(off(root)) < 1e-9 ? root : null;
}
