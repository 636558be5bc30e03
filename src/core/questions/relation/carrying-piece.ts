import { influenceMeasures } from "../fits/influence-measures.ts";
import type { LinearFit } from "../fits/linear-fit.ts";
import { linearFit } from "../fits/linear-fit.ts";

/** The record that moves a slope most when left out: its number in the sample, the slope without it and its interval, whether the answer turns. */
export type CarryingPiece = {
  readonly at: number;
  readonly dfbetas: number;
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly standardError: number;
  readonly turns: boolean;
};

const direction = (low: number, high: number): number => (low > 0 ? 1 : high < 0 ? -1 : 0);

/**
 * Leaves each record out in turn (by leverages, then refits the three that move the slope most) and returns the one that carries the answer:
 * one that turns it first, else the one of the largest change. null with too few records to leave any out. slope: place of the slope.
 */
export function carryingPiece(fit: LinearFit, y: Float64Array, slope: number): CarryingPiece | null {
  if (fit.degreesOfFreedom < 2) return null;
  const moves = influenceMeasures(fit).dfbetas[slope] ?? new Float64Array();
  const order = Array.from(moves, (_, i) => i)
    .filter((i) => Number.isFinite(moves[i]))
    .sort((a, b) => Math.abs(moves[b] ?? 0) - Math.abs(moves[a] ?? 0));
  const whole = direction(fit.low[slope] as number, fit.high[slope] as number);
  const candidates = order.slice(0, 3).flatMap((at): CarryingPiece[] => {
    const kept = (values: Float64Array) => values.filter((_, i) => i !== at);
    const rest = linearFit(fit.X.map(kept), kept(y));
    if (rest.rank < fit.X.length) return [];
    const [value, low, high] = [
      rest.coefficients[slope] as number,
      rest.low[slope] as number,
      rest.high[slope] as number,
    ];
    return [
      {
        at,
        dfbetas: moves[at] as number,
        value,
        low,
        high,
        standardError: rest.standardErrors[slope] as number,
        turns: direction(low, high) !== whole,
      },
    ];
  });
  return candidates.find((one) => one.turns) ?? candidates[0] ?? null;
}
