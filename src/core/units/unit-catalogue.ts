// Every unit there is, by code and by spelling. Adding one is a line in the file of its theme.
import type { UnitRecord } from "./unit-record.ts";
import { unitsOfLength } from "./units-of-length.ts";
import { unitsOfMassAndForce } from "./units-of-mass-and-force.ts";
import { unitsOfRatio } from "./units-of-ratio.ts";
import { unitsOfTimeAndTemperature } from "./units-of-time-and-temperature.ts";

/** All units in the order in which they are listed to people. */
export const unitCatalogue: readonly UnitRecord[] = [
  ...unitsOfLength,
  ...unitsOfMassAndForce,
  ...unitsOfTimeAndTemperature,
  ...unitsOfRatio,
];

const byCode = new Map(unitCatalogue.map((record) => [record.code, record]));

// "mm" -> "mm", "INCHES" by its lower case -> "[in_i]"; shorter spellings only as written: "mm" is not "Mm".
const bySpelling = new Map(
  unitCatalogue.flatMap((record) => record.spellings.map((spelling) => [spelling, record] as const)),
);
const byWord = new Map([...bySpelling].filter(([spelling]) => /^[a-z]{4,}$/.test(spelling)));

/** The unit with this code alone, no compound; undefined if there is none. */
export const unitRecordOfCode = (code: string): UnitRecord | undefined => byCode.get(code);

/** The unit written so in the trade, or by its code; undefined if there is none. */
export const unitRecordOfSpelling = (text: string): UnitRecord | undefined =>
  bySpelling.get(text) ?? (text === "1" ? undefined : byCode.get(text)) ?? byWord.get(text.toLowerCase());
