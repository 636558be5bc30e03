import {
  bracketedRoot,
  type Climbed,
  chiSquareQuantile,
  chiSquareUpperTail,
  generatorFromSeed,
  quickNormalQuantile,
} from "../../numerics/index.ts";
import { usualSeed } from "../resampling/usual-seed.ts";
import { firthFit, type Logistic } from "./firth-fit.ts";

const MOST_REACHES = 60;
/** Tops found last from which a fit starts as well. */
const KEPT = 4;
/** Starts all about, from which an end is tried once more. */
const SCATTERED = 24;
/** More records than this are seldom parted so nearly that the profile has several tops. */
const FEW = 200;

/** Interval and p of one coefficient from the penalized likelihood with the others refitted; an end that is not found is NaN. */
export type FirthProfile = { readonly low: number; readonly high: number; readonly p: number };

/**
 * Where twice the fall of the profile penalized likelihood reaches the chi-square point of one degree of freedom, on either side, and its p at zero.
 * error: a standard error, for the reach of the first try. Relative 1e-9 by Brent's method.
 * Source: Heinze and Schemper (2002), Statistics in Medicine 21, 2409-2419.
 */
export function firthProfile(data: Logistic, top: Climbed, at: number, error: number, level: number): FirthProfile {
  const limit = chiSquareQuantile(level, 1) / 2;
  const estimate = top.place[at] as number;
  // The other coefficients go nearly straight with the held one, so a fit starts on the line through the top and the last one found. Where the
  // records are nearly separated there may be several tops, or none in reach from there: it starts at the top, and at those found on the way, as well.
  let last: Climbed = top;
  let found: readonly Climbed[] = [top];
  const fallAt = (value: number): number => {
    const gone = (last.place[at] as number) - estimate;
    const share = gone === 0 ? 0 : (value - estimate) / gone;
    const straight = top.place.map((one, j) => one + share * ((last.place[j] as number) - one));
    const fits = [straight, ...found.map(({ place }) => place)].flatMap(
      (start) =>
        firthFit(
          data,
          start.map((one, j) => (j === at ? value : one)),
          at,
        ) ?? [],
    );
    const [fit] = fits.sort((one, other) => other.height - one.height);
    if (!fit) return Number.NaN;
    last = fit;
    found = [...found, fit].slice(-KEPT);
    return top.height - fit.height;
  };
  // A top that nothing so far has led to may still be higher at an end: from there the search for the end goes on.
  const higherAt = (value: number): Climbed | null => {
    const generator = generatorFromSeed(usualSeed).split("starts of a profile");
    const normal = () => quickNormalQuantile(generator.next() || 2 ** -54);
    for (let start = 0; start < SCATTERED && data.y.length <= FEW; start++) {
      const place = top.place.map((one, j) => (j === at ? value : one * (1 + 3 * normal()) + 2 * normal()));
      const fit = firthFit(data, place, at);
      if (fit && top.height - fit.height < limit - 1e-6) return fit;
    }
    return null;
  };
  const end = (side: number): number => {
    [last, found] = [top, [top]];
    let [near, far] = [estimate, estimate + side * error];
    for (let reach = 0; reach < MOST_REACHES; reach++) {
      const fall = fallAt(far);
      if (Number.isNaN(fall)) return Number.NaN;
      if (fall > limit) {
        const value = bracketedRoot(
          (each) => fallAt(each) - limit,
          Math.min(near, far),
          Math.max(near, far),
          1e-10 * (1 + Math.abs(far)),
        );
        const higher = higherAt(value);
        if (!higher) return value;
        [last, found, far] = [higher, [...found, higher].slice(-KEPT), value];
      }
      [near, far] = [far, far + 0.5 * (far - estimate)];
    }
    return Number.NaN;
  };
  last = top;
  const fall = fallAt(0);
  return {
    low: end(-1),
    high: end(1),
    p: Number.isNaN(fall) ? Number.NaN : chiSquareUpperTail(Math.max(0, 2 * fall), 1),
  };
}
