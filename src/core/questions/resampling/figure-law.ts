/** The law of a figure over resamples: its values in rising order, how many resamples are up to each (whole numbers), and how many do not have it. */
export type FigureLaw = { readonly values: Float64Array; readonly upTo: Float64Array; readonly dropped: number };

/**
 * The law of figures. figures: NaN where a resample does not have it; weights: how many resamples each stands for, null for one each.
 */
export function figureLaw(figures: Float64Array, weights: Float64Array | null): FigureLaw {
  if (weights === null) {
    const values = figures.filter(Number.isFinite).sort();
    return { values, upTo: values.map((_, at) => at + 1), dropped: figures.length - values.length };
  }
  const order = Array.from(figures.keys())
    .filter((at) => Number.isFinite(figures[at]))
    .sort((a, b) => (figures[a] as number) - (figures[b] as number));
  let all = 0;
  const upTo = Float64Array.from(order, (at) => {
    all += weights[at] as number;
    return all;
  });
  const dropped = weights.reduce((sum, weight) => sum + weight, 0) - all;
  return { values: Float64Array.from(order, (at) => figures[at] as number), upTo, dropped };
}

/** How many resamples have the figure. */
export const resamplesOf = ({ upTo }: FigureLaw): number => upTo.at(-1) ?? 0;

/** The figure of the k-th resample in rising order, k from 1. */
function figureAt({ values, upTo }: FigureLaw, k: number): number {
  let [low, high] = [0, values.length - 1];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((upTo[middle] as number) < k) low = middle + 1;
    else high = middle;
  }
  return values[low] ?? Number.NaN;
}

/** A place within 4 ulp of a whole number is that number. */
const near = (place: number): number => 4 * Number.EPSILON * Math.max(1, place);

/** The smallest figure with at least a share p of the resamples up to it: the inverse of the distribution function (type 1). p in [0, 1]. */
export function inverseOfLaw(law: FigureLaw, p: number): number {
  const place = p * resamplesOf(law);
  return figureAt(law, Math.max(1, Math.ceil(place - near(place))));
}

/** Quantile of type 7: on a straight line between the figures at whole places around (n - 1) p + 1. p in [0, 1]. */
export function interpolatedOfLaw(law: FigureLaw, p: number): number {
  const place = (resamplesOf(law) - 1) * p + 1;
  const whole = Math.floor(place + near(place));
  const share = Math.max(0, place - whole);
  const low = figureAt(law, whole);
  return share <= near(place) ? low : low + share * (figureAt(law, whole + 1) - low);
}

/** Mean and standard deviation (divided by the number of resamples, as a law has it). */
export function momentsOfLaw(law: FigureLaw): { readonly mean: number; readonly sd: number } {
  const all = resamplesOf(law);
  const over = (of: (value: number) => number) => {
    let sum = 0;
    for (let at = 0; at < law.values.length; at++) {
      const weight = (law.upTo[at] as number) - (at === 0 ? 0 : (law.upTo[at - 1] as number));
      sum += (weight / all) * of(law.values[at] as number);
    }
    return sum;
  };
  const first = law.values[0] ?? 0;
  const mean = first + over((value) => value - first);
  return { mean, sd: Math.sqrt(over((value) => (value - mean) ** 2)) };
}

/** Share of the resamples below a figure, those at it (within `slack`) counted half. */
export function shareBelow({ values, upTo }: FigureLaw, figure: number, slack: number): number {
  const before = (bound: number, isIn: (value: number) => boolean) => {
    let at = 0;
    while (at < values.length && ((values[at] as number) < bound || isIn(values[at] as number))) at++;
    return at === 0 ? 0 : (upTo[at - 1] as number);
  };
  const below = before(figure - slack, () => false);
  const notAbove = before(figure - slack, (value) => value <= figure + slack);
  return (below + notAbove) / 2 / (upTo.at(-1) ?? Number.NaN);
}
