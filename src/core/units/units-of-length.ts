// Units of length; areas and volumes are their powers.
import type { UnitRecord } from "./unit-record.ts";
import { NIST_SP_811, SI_BROCHURE } from "./unit-record.ts";

const length = { length: [1, 1] } as const;

export const unitsOfLength: readonly UnitRecord[] = [
  { code: "m", spellings: ["m", "metre", "metres", "meter", "meters"], shown: "m", words: ["metre", "metres"], dimension: length, ratio: [1, 1], source: SI_BROCHURE },
  { code: "mm", spellings: ["mm", "millimetre", "millimetres", "millimeter", "millimeters"], shown: "mm", words: ["millimetre", "millimetres"], dimension: length, ratio: [1, 1000], source: SI_BROCHURE },
  { code: "cm", spellings: ["cm", "centimetre", "centimetres", "centimeter", "centimeters"], shown: "cm", words: ["centimetre", "centimetres"], dimension: length, ratio: [1, 100], source: SI_BROCHURE },
  { code: "km", spellings: ["km"], shown: "km", words: ["kilometre", "kilometres"], dimension: length, ratio: [1000, 1], source: SI_BROCHURE },
  { code: "um", spellings: ["um", "micron", "microns", "micrometre", "micrometres"], shown: "µm", words: ["micrometre", "micrometres"], dimension: length, ratio: [1, 1_000_000], source: SI_BROCHURE },
  { code: "[in_i]", spellings: ["in", "in.", "inch", "inches", '"', "″", "”", "''"], shown: "in", words: ["inch", "inches"], dimension: length, ratio: [127, 5000], source: NIST_SP_811 },
  { code: "[ft_i]", spellings: ["ft", "ft.", "foot", "feet"], shown: "ft", words: ["foot", "feet"], dimension: length, ratio: [381, 1250], source: NIST_SP_811 },
  { code: "[mil_i]", spellings: ["thou", "mil", "mils"], shown: "thou", words: ["thousandth of an inch", "thousandths of an inch"], dimension: length, ratio: [127, 5_000_000], source: NIST_SP_811 },
  { code: "L", spellings: ["litre", "litres", "liter", "liters"], shown: "L", words: ["litre", "litres"], dimension: { length: [3, 1] }, ratio: [1, 1000], source: SI_BROCHURE },
  { code: "mL", spellings: ["mL", "ml", "millilitre", "millilitres"], shown: "mL", words: ["millilitre", "millilitres"], dimension: { length: [3, 1] }, ratio: [1, 1_000_000], source: SI_BROCHURE },
];
