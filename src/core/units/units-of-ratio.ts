// Units without base dimensions of the SI. Those that mean unlike things are kinds of their own, so that they cannot be added.
import type { UnitRecord } from "./unit-record.ts";
import { SI_BROCHURE } from "./unit-record.ts";

const angle = { angle: [1, 1] } as const;

export const unitsOfRatio: readonly UnitRecord[] = [
  { code: "1", spellings: [], shown: "", words: ["", ""], dimension: {}, ratio: [1, 1], source: SI_BROCHURE },
  {
    code: "%",
    spellings: ["%", "pct", "percent", "% of green", "% RH", "%RH"],
    shown: "%",
    words: ["percent", "percent"],
    dimension: {},
    ratio: [1, 100],
    source: SI_BROCHURE,
  },
  {
    code: "%MC",
    spellings: ["%MC", "% MC"],
    shown: "% MC",
    words: ["percent moisture content", "percent moisture content"],
    dimension: { moisture: [1, 1] },
    ratio: [1, 100],
    source: "percent of oven-dry mass, ASTM D4442",
  },
  {
    code: "{cent}",
    spellings: ["ct", "cent", "cents"],
    shown: "cents",
    words: ["cent", "cents"],
    dimension: { cents: [1, 1] },
    ratio: [1, 1],
    source: "1200 log2 of a ratio of frequencies",
  },
  {
    code: "dB",
    spellings: ["dB", "decibel", "decibels"],
    shown: "dB",
    words: ["decibel", "decibels"],
    dimension: { level: [1, 1] },
    ratio: [1, 1],
    source: SI_BROCHURE,
  },
  {
    code: "rad",
    spellings: ["rad", "radian", "radians"],
    shown: "rad",
    words: ["radian", "radians"],
    dimension: angle,
    ratio: [1, 1],
    source: SI_BROCHURE,
  },
  {
    code: "deg",
    spellings: ["deg", "°", "degree", "degrees"],
    shown: "°",
    words: ["degree", "degrees"],
    dimension: angle,
    ratio: [1, 180],
    irrational: Math.PI,
    source: SI_BROCHURE,
  },
  {
    code: "'",
    spellings: ["arcmin", "′", "'"],
    shown: "′",
    words: ["minute of arc", "minutes of arc"],
    dimension: angle,
    ratio: [1, 10_800],
    irrational: Math.PI,
    source: SI_BROCHURE,
  },
];
