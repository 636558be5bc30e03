// Units of time, of frequency and of temperature.
import type { UnitRecord } from "./unit-record.ts";
import { NIST_SP_811, SI_BROCHURE } from "./unit-record.ts";

const time = { time: [1, 1] } as const;
const frequency = { time: [-1, 1] } as const;
const temperature = { temperature: [1, 1] } as const;

export const unitsOfTimeAndTemperature: readonly UnitRecord[] = [
  { code: "s", spellings: ["s", "sec", "second", "seconds"], shown: "s", words: ["second", "seconds"], dimension: time, ratio: [1, 1], source: SI_BROCHURE },
  { code: "ms", spellings: ["ms"], shown: "ms", words: ["millisecond", "milliseconds"], dimension: time, ratio: [1, 1000], source: SI_BROCHURE },
  { code: "us", spellings: ["us"], shown: "µs", words: ["microsecond", "microseconds"], dimension: time, ratio: [1, 1_000_000], source: SI_BROCHURE },
  { code: "min", spellings: ["min", "minute", "minutes"], shown: "min", words: ["minute", "minutes"], dimension: time, ratio: [60, 1], source: SI_BROCHURE },
  { code: "h", spellings: ["h", "hour", "hours"], shown: "h", words: ["hour", "hours"], dimension: time, ratio: [3600, 1], source: SI_BROCHURE },
  { code: "d", spellings: ["d", "day", "days"], shown: "d", words: ["day", "days"], dimension: time, ratio: [86_400, 1], source: SI_BROCHURE },
  { code: "Hz", spellings: ["Hz", "hertz"], shown: "Hz", words: ["hertz", "hertz"], dimension: frequency, ratio: [1, 1], source: SI_BROCHURE },
  { code: "kHz", spellings: ["kHz"], shown: "kHz", words: ["kilohertz", "kilohertz"], dimension: frequency, ratio: [1000, 1], source: SI_BROCHURE },
  { code: "K", spellings: ["K", "kelvin", "kelvins"], shown: "K", words: ["kelvin", "kelvins"], dimension: temperature, ratio: [1, 1], source: SI_BROCHURE },
  { code: "Cel", spellings: ["°C", "℃", "degC"], shown: "°C", words: ["degree Celsius", "degrees Celsius"], dimension: temperature, ratio: [1, 1], offset: 273.15, source: SI_BROCHURE },
  { code: "[degF]", spellings: ["°F", "℉", "degF"], shown: "°F", words: ["degree Fahrenheit", "degrees Fahrenheit"], dimension: temperature, ratio: [5, 9], offset: (459.67 * 5) / 9, source: NIST_SP_811 },
];
