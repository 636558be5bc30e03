import { compensatedSum } from "../compensated-sum.ts";
import { normalDensity } from "../distributions/normal-density.ts";
import { normalLowerTail } from "../distributions/normal-lower-tail.ts";
import { gaussLegendreNodes } from "./gauss-legendre-nodes.ts";
import type { InputLaw } from "./input-law.ts";

/** The other input's law is cut here, in standard deviations. */
const CUT = 9;
const PANELS = 48;
const rule = gaussLegendreNodes(16);

/** Where the other input has probability, and its density there up to a constant. */
function density(law: InputLaw): { readonly reach: number; readonly at: (offset: number) => number } | null {
  if (law.law === "normal") return { reach: CUT * law.sd, at: (offset) => normalDensity(offset / law.sd) / law.sd };
  if (law.law === "rectangular") return { reach: law.halfWidth, at: () => 0.5 / law.halfWidth };
  if (law.law === "triangular")
    return { reach: law.halfWidth, at: (offset) => (1 - Math.abs(offset) / law.halfWidth) / law.halfWidth };
  return null;
}

/**
 * P(c0(b) + c1(b) a <= q) for a normal and b of another law, independent of a: the integral over b of the normal tail given b. Ratios, products
 * and powers of two inputs are of this form where one of them enters to the first power.
 * normal: mean and sd > 0 of a; other: law of b, normal (cut at nine sd), rectangular or triangular; line: c0 and c1 at b. Gauss-Legendre, 48 panels of
 * 16 points: relative 1e-10 where c1 keeps its sign. Result: the function of q; NaN where the model is not finite; null for other laws.
 * Source: total probability; D. V. Hinkley (1969), Biometrika 56, 635-639, for the ratio of normals.
 */
export function affineLawLowerTail(
  normal: { readonly mean: number; readonly sd: number },
  other: InputLaw,
  line: (b: number) => { readonly constant: number; readonly factor: number },
): ((q: number) => number) | null {
  const weight = density(other);
  if (!weight) return null;
  const points: { readonly center: number; readonly sd: number; readonly weight: number }[] = [];
  const half = weight.reach / PANELS;
  for (let panel = 0; panel < PANELS; panel++) {
    const middle = -weight.reach + (2 * panel + 1) * half;
    for (const [k, node] of rule.nodes.entries()) {
      const offset = middle + half * node;
      const { constant, factor } = line(other.mean + offset);
      const center = constant + factor * normal.mean;
      const sd = Math.abs(factor) * normal.sd;
      points.push({ center, sd, weight: half * (rule.weights[k] as number) * weight.at(offset) });
    }
  }
  return (q) => compensatedSum(points.map(({ center, sd, weight: w }) => w * normalLowerTail((q - center) / sd)));
}
