import { declined, power, succeeded } from "../base/index.ts";
import { bracketedRoot } from "../numerics/index.ts";
import { freeBarRoot } from "./free-bar-root.ts";
import { shearCoefficient } from "./shear-coefficient.ts";
import { sources } from "./sources.ts";
import { woodAnswer } from "./wood-answer.ts";
import { leftOut, positive, woodDensity, woodModulus } from "./wood-method.ts";

/**
 * What must vanish at a free bar's frequency b = omega L^2 sqrt(density A/(E I)), for shapes alike (even) or opposite (odd) about the middle: moment and shear
 * force at the ends, w = cosh m x and cos n x (or sinh and sin) solving the equations of motion. r^2 = I/(A L^2), s^2 = E I/(k G A L^2), b r s < 1.
 */
function endCondition(isEven: boolean, r2: number, s2: number): (b: number) => number {
  return (b) => {
    const inner = Math.sqrt((r2 - s2) ** 2 + 4 / b ** 2);
    const m = b * Math.sqrt(Math.max(0, (inner - r2 - s2) / 2));
    const n = b * Math.sqrt((inner + r2 + s2) / 2);
    const [hyperbolic, trigonometric] = [(m * m + b * b * s2) / n, n * n - b * b * s2];
    const tanhOverM = m < 1e-8 ? 0.5 : Math.tanh(m / 2) / m;
    return isEven
      ? hyperbolic * Math.sin(n / 2) + trigonometric * Math.cos(n / 2) * tanhOverM
      : hyperbolic * Math.cos(n / 2) * m * m * tanhOverM - trigonometric * Math.sin(n / 2);
  };
}

/**
 * Bending frequencies of a free bar with shear and rotary inertia (Timoshenko), exactly: roots of the frequency equation to rounding.
 * youngsModulus, shearModulus: Pa (that of the plane of bending); density: kg/m3; length, thickness: m; modes: how many; coefficient: k of the section.
 * Result: Hz, lowest first; fewer than asked for where the next lies above the frequency at which the section shears by itself, sqrt(k G A/(density I)).
 * Source: Timoshenko, Phil. Mag. 41 (1921) 744-746; frequency equations as in Huang, J. Appl. Mech. 28 (1961) 579-584, written for even and odd shapes.
 */
export function timoshenkoBarFrequencies(
  youngsModulus: number,
  shearModulus: number,
  density: number,
  length: number,
  thickness: number,
  modes: number,
  coefficient = 5 / 6,
): readonly number[] {
  const r2 = (thickness / length) ** 2 / 12;
  const s2 = (r2 * youngsModulus) / (coefficient * shearModulus);
  const scale = Math.sqrt((youngsModulus * r2) / density) / (2 * Math.PI * length);
  const cutOff = 1 / Math.sqrt(r2 * s2);
  const rootsOf = (isEven: boolean, count: number) => {
    const condition = endCondition(isEven, r2, s2);
    const found: number[] = [];
    const step = power(freeBarRoot(1), 2) / 64;
    let low = step / 16;
    // A thin bar's root bounds from above; the step is a small share of the distance between roots.
    const end = Math.min(cutOff, freeBarRoot(modes) ** 2 * 1.001);
    while (low < end && found.length < count) {
      const high = Math.min(low + step, end);
      if (condition(low) > 0 !== condition(high) > 0) found.push(bracketedRoot(condition, low, high));
      low = high;
    }
    return found;
  };
  const even = rootsOf(true, Math.ceil(modes / 2));
  const odd = rootsOf(false, Math.floor(modes / 2));
  return [...even, ...odd].sort((one, other) => one - other).map((b) => b * scale);
}

const ordinals = ["lowest", "second", "third", "fourth", "fifth", "sixth"];
export const timoshenkoBarFrequenciesMethod = woodAnswer({
  id: "timoshenko-bar-frequencies",
  name: "bending frequencies of a free bar with shear and rotary inertia",
  inputs: {
    youngsModulus: woodModulus("Young's modulus along the length"),
    shearModulus: positive("Pa", "shear modulus of the plane of bending: G_LT flat, G_LR on edge"),
    density: woodDensity(),
    length: positive("m", "length"),
    thickness: positive("m", "thickness in the direction of bending"),
    coefficient: shearCoefficient,
    modes: leftOut(
      { kind: "number", dimension: "1", meaning: "how many modes", whole: true, atLeast: 1, atMost: 30 },
      6,
    ),
  },
  fields: {
    frequencies: { meaning: "bending frequencies, lowest first", dimension: "Hz" },
    ...Object.fromEntries(
      ordinals.map((which, at) => [`frequency${at + 1}`, { meaning: `the ${which} of them`, dimension: "Hz" }]),
    ),
    factor: { meaning: "true over uncorrected modulus of the lowest mode", dimension: "1" },
  },
  source: sources.timoshenkoExact,
  run: ({ youngsModulus, shearModulus, density, length, thickness, coefficient, modes }) => {
    if (!(thickness < length))
      return declined("out-of-domain", {
        name: "thickness (in the direction of bending)",
        needed: "less than the length",
      });
    const frequencies = timoshenkoBarFrequencies(
      youngsModulus,
      shearModulus,
      density,
      length,
      thickness,
      modes,
      coefficient,
    );
    const [lowest] = frequencies;
    if (lowest === undefined)
      return declined("not-finite", { name: "a bending frequency below that of the section's own shear" });
    const thin =
      (freeBarRoot(1) ** 2 * thickness * Math.sqrt(youngsModulus / density)) /
      (4 * Math.PI * Math.sqrt(3) * length ** 2);
    return succeeded({
      frequencies,
      ...Object.fromEntries(frequencies.slice(0, 6).map((frequency, at) => [`frequency${at + 1}`, frequency])),
      factor: (thin / lowest) ** 2,
    });
  },
});
