// A unit as data. Files of records by theme spread into unitCatalogue.
import type { Dimension } from "./dimension.ts";

/** One unit that can stand alone or as a part of a compound unit. */
export type UnitRecord = {
  /** UCUM code, or ours where UCUM has none (`%MC`). */
  readonly code: string;
  /** How it is written in the trade. Words of four letters or more are known in any case. */
  readonly spellings: readonly string[];
  /** As shown to people. */
  readonly shown: string;
  /** As read aloud: one, several. */
  readonly words: readonly [one: string, several: string];
  readonly dimension: Dimension;
  /** SI units in one of it, as an exact ratio of whole numbers. */
  readonly ratio: readonly [numerator: number, denominator: number];
  /** A factor beside the ratio that no fraction gives (pi). */
  readonly irrational?: number;
  /** Added after scaling to reach the SI value; only for temperatures on a scale. */
  readonly offset?: number;
  readonly source: string;
};

export const NIST_SP_811 = "NIST Special Publication 811 (2008), Appendix B";
export const SI_BROCHURE = "BIPM, The International System of Units, 9th edition (2019)";
