import {
  studentizedRangeLowerTail,
  studentizedRangeUpperQuantile,
  studentizedRangeUpperTail,
} from "../../numerics/index.ts";
import type { Law } from "./law.ts";

const rangeUpperQuantile = (p: number, means: number, df: number): number =>
  p <= 0 ? Number.POSITIVE_INFINITY : p >= 1 ? 0 : studentizedRangeUpperQuantile(p, means, df);

/** The studentized range as the table of laws takes it; it has no density there. means: whole, from 2; df > 0, Infinity allowed. */
export const studentizedRangeLaw = (means: number, df: number): Law => ({
  lower: (x) => studentizedRangeLowerTail(x, means, df),
  upper: (x) => studentizedRangeUpperTail(x, means, df),
  quantile: (p) => rangeUpperQuantile(1 - p, means, df),
  upperQuantile: (p) => rangeUpperQuantile(p, means, df),
});
