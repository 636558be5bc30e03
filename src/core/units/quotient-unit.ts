// Codes of products, quotients and powers of units, for slopes and computed columns.
import type { Dimension } from "./dimension.ts";
import { baseQuantities, sameDimension } from "./dimension.ts";

const isCompound = (code: string) => code.includes("/") || code.includes(".");
const bracketed = (code: string) => (isCompound(code) ? `(${code})` : code);

/** The unit of y per x, the slope's: "mm" by "GPa" is "mm/GPa"; "mm" by "kg/m3" is "mm/(kg/m3)"; the same twice is "1". */
export function quotientUnit(yCode: string, xCode: string): string {
  if (yCode === xCode) return "1";
  return xCode === "1" ? yCode : `${yCode}/${bracketed(xCode)}`;
}

const NAMED: readonly (readonly [string, Dimension])[] = [
  ["Hz", { time: [-1, 1] }],
  ["N", { mass: [1, 1], length: [1, 1], time: [-2, 1] }],
  ["N.m", { mass: [1, 1], length: [2, 1], time: [-2, 1] }],
  ["N.m2", { mass: [1, 1], length: [3, 1], time: [-2, 1] }],
  ["N/m", { mass: [1, 1], time: [-2, 1] }],
  ["Pa", { mass: [1, 1], length: [-1, 1], time: [-2, 1] }],
];
const BASE = {
  mass: "kg",
  length: "m",
  time: "s",
  temperature: "K",
  angle: "rad",
  cents: "{cent}",
  moisture: "%MC",
  level: "dB",
} as const;

/** The coherent SI unit of a dimension: "Pa", "kg/m3", "m4/(kg.s)", "1". Moisture alone has no coherent code: it is shown in %MC (factor 0.01). */
export function coherentUnit(dimension: Dimension): string {
  for (const [code, named] of NAMED) if (sameDimension(named, dimension)) return code;
  const powers = baseQuantities.flatMap((quantity) => {
    const [n, d] = dimension[quantity] ?? [0, 1];
    if (n === 0) return [];
    const size = Math.abs(n);
    return [{ above: n > 0, code: BASE[quantity] + (d !== 1 ? `^(${size}/${d})` : size === 1 ? "" : String(size)) }];
  });
  const above = powers
    .filter((power) => power.above)
    .map((power) => power.code)
    .join(".");
  const below = powers
    .filter((power) => !power.above)
    .map((power) => power.code)
    .join(".");
  if (below === "") return above === "" ? "1" : above;
  return `${above === "" ? "1" : above}/${bracketed(below)}`;
}
