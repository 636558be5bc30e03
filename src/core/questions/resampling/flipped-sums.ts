import type { Generator } from "../../base/index.ts";

/** Calls `take` with the sum of the differences for every choice of their signs, 2^n of them. */
export function everyFlip(differences: Float64Array, take: (sum: number) => void): void {
  const flip = (at: number, sum: number): void => {
    if (at === differences.length) {
      take(sum);
      return;
    }
    flip(at + 1, sum + (differences[at] as number));
    flip(at + 1, sum - (differences[at] as number));
  };
  flip(0, 0);
}

/** The sum of the differences with signs drawn at random, `draws` times. */
export function drawnFlips(differences: Float64Array, draws: number, stream: Generator): Float64Array {
  return Float64Array.from({ length: draws }, () => {
    let sum = 0;
    for (const difference of differences) sum += stream.next() < 0.5 ? difference : -difference;
    return sum;
  });
}

export const flippedSums = { everyFlip, drawnFlips } as const;
