// The top of a function by Newton's steps, halved until they climb.

/** Height at a place, and the step that would lead to the top were the function a parabola; `gain`: gradient times step, twice what is to be gained. */
export type Slope = { readonly height: number; readonly step: Float64Array; readonly gain: number };

export type Climbed = { readonly place: Float64Array; readonly height: number; readonly steps: number };

const MOST_STEPS = 200;
const MOST_HALVINGS = 40;

/**
 * Climbs from `start` by Newton's steps, each halved until the height does not fall. slopeAt: height, step and gain at a place, null where it is none.
 * Stops when a step would gain less than 1e-13 of the height (and of 1) and is itself below 1e-9 of the place (and of 1); one last whole step is taken then.
 * null where `start` is no place, or 200 steps do not reach the top: the function has none, or runs away.
 * Source: S. Boyd, L. Vandenberghe (2004), Convex Optimization, section 9.5 (damped Newton method, Newton decrement).
 */
export function climbed(start: Float64Array, slopeAt: (place: Float64Array) => Slope | null): Climbed | null {
  let place = start;
  let here = slopeAt(place);
  for (let steps = 0; here && steps < MOST_STEPS; steps++) {
    const { height, step, gain } = here;
    if (!Number.isFinite(height) || !step.every(Number.isFinite)) return null;
    const size = step.reduce(
      (most, value, j) => Math.max(most, Math.abs(value) / (1 + Math.abs(place[j] as number))),
      0,
    );
    const isThere = Math.abs(gain) < 1e-13 * (1 + Math.abs(height)) && size < 1e-9;
    let share = 1;
    let next: Float64Array = place;
    let there: Slope | null = null;
    for (let halving = 0; halving < MOST_HALVINGS; halving++, share /= 2) {
      next = place.map((value, j) => value + share * (step[j] as number));
      there = slopeAt(next);
      if (there && there.height >= height - 1e-12 * (1 + Math.abs(height))) break;
      there = null;
    }
    if (!there) return size < 1e-6 ? { place, height, steps } : null;
    [place, here] = [next, there];
    if (isThere) return { place, height: there.height, steps: steps + 1 };
  }
  return null;
}
