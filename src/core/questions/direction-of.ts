import type { Estimate } from "../base/index.ts";

/** Which way an estimate points for certain: 1 up, -1 down, 0 when its interval holds zero. */
export const directionOf = ({ low, high }: Pick<Estimate, "low" | "high">): -1 | 0 | 1 =>
  low > 0 ? 1 : high < 0 ? -1 : 0;
