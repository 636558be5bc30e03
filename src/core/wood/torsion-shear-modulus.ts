import { power } from "../base/index.ts";
import { shortShapeCautions } from "./short-shape-cautions.ts";
import { sources } from "./sources.ts";
import { positive, woodDensity, woodMethod } from "./wood-method.ts";

/**
 * Shear modulus from the lowest twisting frequency of a free strip: G = density (2 L f)^2 Ip/J,
 * Ip = b h (b^2 + h^2)/12, J = b h^3 [1/3 - (64/pi^5)(h/b) sum over odd n of tanh(n pi b/2h)/n^5].
 * density: kg/m3; frequency: Hz; length, width, thickness: m, width >= thickness. Result: Pa. Source: Saint-Venant torsion.
 */
export function torsionShearModulus(
  density: number,
  frequency: number,
  length: number,
  width: number,
  thickness: number,
): number {
  const ratio = width / thickness;
  let sum = 0;
  for (let n = 1; n < 40; n += 2) sum += Math.tanh((n * Math.PI * ratio) / 2) / power(n, 5);
  const J = width * power(thickness, 3) * (1 / 3 - (64 / power(Math.PI, 5) / ratio) * sum);
  const Ip = (width * thickness * (width ** 2 + thickness ** 2)) / 12;
  return (density * (2 * length * frequency) ** 2 * Ip) / J;
}

/** Length over width from which on the ends, which cannot warp freely as the formula has it, are left out without a word. Common practice, no source. */
const LONG = 4;

export const torsionShearModulusMethod = woodMethod({
  id: "torsion-shear-modulus",
  name: "shear modulus from the twisting frequency of a strip",
  inputs: {
    density: woodDensity(),
    frequency: positive("Hz", "lowest twisting frequency"),
    length: positive("m", "length along the grain"),
    width: positive("m", "width across the grain"),
    thickness: positive("m", "thickness"),
  },
  fields: { shearModulus: { meaning: "shear modulus", dimension: "Pa" } },
  source: sources.torsion,
  run: ({ density, frequency, length, width, thickness }) => ({
    shearModulus: torsionShearModulus(density, frequency, length, width, thickness),
  }),
  cautions: ({ length, width }) => shortShapeCautions("Length over width", length, width, LONG),
});
