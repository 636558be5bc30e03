// Units of mass, of force and of pressure. An ounce or a pound is a mass; with an f it is the force of it (standard gravity 9.80665 m/s2).
import type { UnitRecord } from "./unit-record.ts";
import { NIST_SP_811, SI_BROCHURE } from "./unit-record.ts";

const mass = { mass: [1, 1] } as const;
const force = { mass: [1, 1], length: [1, 1], time: [-2, 1] } as const;
const pressure = { mass: [1, 1], length: [-1, 1], time: [-2, 1] } as const;

export const unitsOfMassAndForce: readonly UnitRecord[] = [
  { code: "kg", spellings: ["kg", "kilo", "kilos", "kilogram", "kilograms"], shown: "kg", words: ["kilogram", "kilograms"], dimension: mass, ratio: [1, 1], source: SI_BROCHURE },
  { code: "g", spellings: ["g", "gr", "gram", "grams", "gramme", "grammes"], shown: "g", words: ["gram", "grams"], dimension: mass, ratio: [1, 1000], source: SI_BROCHURE },
  { code: "mg", spellings: ["mg"], shown: "mg", words: ["milligram", "milligrams"], dimension: mass, ratio: [1, 1_000_000], source: SI_BROCHURE },
  { code: "[oz_av]", spellings: ["oz", "oz.", "ounce", "ounces"], shown: "oz", words: ["ounce", "ounces"], dimension: mass, ratio: [45_359_237, 1_600_000_000], source: NIST_SP_811 },
  { code: "[lb_av]", spellings: ["lb", "lbs", "lb.", "pound", "pounds"], shown: "lb", words: ["pound", "pounds"], dimension: mass, ratio: [45_359_237, 100_000_000], source: NIST_SP_811 },
  { code: "N", spellings: ["N", "newton", "newtons"], shown: "N", words: ["newton", "newtons"], dimension: force, ratio: [1, 1], source: SI_BROCHURE },
  { code: "mN", spellings: ["mN"], shown: "mN", words: ["millinewton", "millinewtons"], dimension: force, ratio: [1, 1000], source: SI_BROCHURE },
  { code: "kN", spellings: ["kN"], shown: "kN", words: ["kilonewton", "kilonewtons"], dimension: force, ratio: [1000, 1], source: SI_BROCHURE },
  { code: "kgf", spellings: ["kgf", "kp"], shown: "kgf", words: ["kilogram-force", "kilograms-force"], dimension: force, ratio: [980_665, 100_000], source: NIST_SP_811 },
  { code: "gf", spellings: ["gf"], shown: "gf", words: ["gram-force", "grams-force"], dimension: force, ratio: [980_665, 100_000_000], source: NIST_SP_811 },
  { code: "[lbf_av]", spellings: ["lbf"], shown: "lbf", words: ["pound-force", "pounds-force"], dimension: force, ratio: [44_482_216_152_605, 10_000_000_000_000], source: NIST_SP_811 },
  { code: "Pa", spellings: ["Pa", "pascal", "pascals"], shown: "Pa", words: ["pascal", "pascals"], dimension: pressure, ratio: [1, 1], source: SI_BROCHURE },
  { code: "kPa", spellings: ["kPa"], shown: "kPa", words: ["kilopascal", "kilopascals"], dimension: pressure, ratio: [1000, 1], source: SI_BROCHURE },
  { code: "MPa", spellings: ["MPa"], shown: "MPa", words: ["megapascal", "megapascals"], dimension: pressure, ratio: [1_000_000, 1], source: SI_BROCHURE },
  { code: "GPa", spellings: ["GPa"], shown: "GPa", words: ["gigapascal", "gigapascals"], dimension: pressure, ratio: [1_000_000_000, 1], source: SI_BROCHURE },
  { code: "[psi]", spellings: ["psi"], shown: "psi", words: ["pound per square inch", "pounds per square inch"], dimension: pressure, ratio: [8_896_443_230_521, 1_290_320_000], source: NIST_SP_811 },
  { code: "k[psi]", spellings: ["ksi", "kpsi"], shown: "ksi", words: ["thousand pounds per square inch", "thousand pounds per square inch"], dimension: pressure, ratio: [8_896_443_230_521, 1_290_320], source: NIST_SP_811 },
  { code: "M[psi]", spellings: ["Mpsi"], shown: "Mpsi", words: ["million pounds per square inch", "million pounds per square inch"], dimension: pressure, ratio: [8_896_443_230_521_000, 1_290_320], source: NIST_SP_811 },
];
