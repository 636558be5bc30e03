import type { Method, MethodInputs, Outcome } from "../../base/index.ts";
import { declined, succeeded } from "../../base/index.ts";
import { generatorFromSeed } from "../../numerics/index.ts";
import { type Arrangements, flips, pairings, splits } from "../resampling/arrangements.ts";
import { completeInputs } from "./complete-inputs.ts";
import { groupColumns } from "./group-columns.ts";
import { numberInput } from "./number-input.ts";
import { twoSamples } from "./two-samples.ts";

const DRAWS = 10_000;
const SEED = 20260314;
/** Up to this many arrangements all of them are taken. */
const MOST_ENUMERATED = 1_000_000;
const MOST_WORK = 1e9;
/** Ties of the figure that rounding has parted. */
const TIE = 1e-12;

const statistics = ["difference-of-means", "pearson", "spearman", "slope"] as const;
const isPairing = (name: unknown): name is "pearson" | "spearman" | "slope" =>
  name === "pearson" || name === "spearman" || name === "slope";

type Asked = { readonly arrangements: Arrangements; readonly records: number; readonly setAside: number };

function ofTwoGroups(inputs: MethodInputs): Outcome<Asked> {
  if (inputs.paired === true) {
    const pairs = completeInputs(inputs, ["a", "b"], [], { rows: 2 });
    if (!pairs.ok) return pairs;
    const { a, b } = pairs.value.arrays as { a: Float64Array; b: Float64Array };
    const differences = a.map((value, at) => value - (b[at] as number));
    if (differences.every((value) => value === 0)) return declined("no-spread", { column: "the difference" });
    return succeeded({ arrangements: flips(differences), records: a.length, setAside: pairs.value.setAside });
  }
  const samples = twoSamples(inputs, 1);
  if (!samples.ok) return samples;
  const { a, b, setAside } = samples.value;
  if (a.length + b.length < 3) return declined("too-few-records", { have: a.length + b.length, need: 3 });
  if ([...a, ...b].every((value) => value === a[0])) return declined("no-spread", { column: "values" });
  return succeeded({ arrangements: splits(a, b), records: a.length + b.length, setAside });
}

function ofPairs(inputs: MethodInputs, statistic: "pearson" | "spearman" | "slope"): Outcome<Asked> {
  const labels = inputs.block === undefined ? [] : ["block"];
  const complete = completeInputs(inputs, ["x", "y"], labels, { rows: 3, distinct: { x: 2, y: 2 } });
  if (!complete.ok) return complete;
  const { x, y } = complete.value.arrays as { x: Float64Array; y: Float64Array };
  const { names, codes } = groupColumns(complete.value.labels.block ?? Array.from(x, () => ""));
  const blocks = names.map((_, block) =>
    Int32Array.from(Array.from(codes).flatMap((code, at) => (code === block ? [at] : []))),
  );
  const arrangements = pairings(x, y, blocks, statistic);
  if (!arrangements) return declined("no-spread", { column: "x or y within blocks" });
  return succeeded({ arrangements, records: x.length, setAside: complete.value.setAside });
}

/** How many figures are as far from zero, as large, and as small as the one seen, ties counted in. */
function counter(seen: number) {
  const slack = TIE * Math.max(Math.abs(seen), Number.MIN_VALUE);
  const counts = { all: 0, far: 0, large: 0, small: 0 };
  const take = (figure: number) => {
    counts.all++;
    if (Math.abs(figure) >= Math.abs(seen) - slack) counts.far++;
    if (figure >= seen - slack) counts.large++;
    if (figure <= seen + slack) counts.small++;
  };
  return { counts, take };
}

/** Could chance alone have arranged the records so? The figure seen among its values under every arrangement. */
export const permutation: Method = {
  id: "permutation",
  name: "Permutation test",
  answers: "comparison",
  needs: { rows: 3 },
  inputs: {
    a: { kind: "quantities", optional: true, meaning: "values of the first group" },
    b: { kind: "quantities", optional: true, meaning: "values of the second group" },
    paired: { kind: "yes-no", optional: true, meaning: "a and b are pairs: the signs of their differences are turned" },
    x: { kind: "quantities", optional: true, meaning: "one quantity, in place of two groups" },
    y: { kind: "quantities", optional: true, meaning: "the other; it is rearranged" },
    block: {
      kind: "labels",
      optional: true,
      meaning: "y is rearranged only among records of one block, and means of blocks are taken out",
    },
    statistic: {
      kind: "choice",
      choices: statistics,
      optional: true,
      meaning: "difference of means for two groups, pearson for two quantities, unless given",
    },
    mode: {
      kind: "choice",
      choices: ["exact", "drawn"],
      optional: true,
      meaning: "all arrangements or drawn ones; all where there are a million or fewer unless given",
    },
    draws: {
      kind: "number",
      atLeast: 100,
      atMost: 10_000_000,
      whole: true,
      optional: true,
      meaning: `arrangements drawn, ${DRAWS} unless given`,
    },
    seed: { kind: "number", optional: true, meaning: `seed of the draws, ${SEED} unless given` },
  },
  fields: {
    statistic: { meaning: "the figure seen" },
    arrangements: { meaning: "arrangements looked at, the one seen among them" },
    p_two_sided: { meaning: "share as far from zero as seen" },
    p_greater: { meaning: "share as large as seen" },
    p_less: { meaning: "share as small as seen" },
    p_error: { meaning: "standard error of the two-sided p from drawing; absent where all were taken" },
    seed: { meaning: "seed of the draws; absent where all were taken" },
    set_aside: { meaning: "records without a value" },
    chosen: { meaning: "all arrangements or drawn ones, and why" },
  },
  source: {
    citation:
      "Fisher (1935), The Design of Experiments; Phipson and Smyth (2010), Stat. Appl. Genet. Mol. Biol. 9, 39, for drawn p",
    basis: "published",
  },
  run: (inputs) => {
    const name = inputs.statistic ?? (inputs.x === undefined ? "difference-of-means" : "pearson");
    const asked = isPairing(name) ? ofPairs(inputs, name) : ofTwoGroups(inputs);
    if (!asked.ok) return asked;
    const draws = numberInput(inputs, "draws", { above: 99, below: 10_000_001, otherwise: DRAWS });
    const seed = numberInput(inputs, "seed", { otherwise: SEED });
    if (!draws.ok) return draws;
    if (!seed.ok) return seed;
    const { arrangements, records, setAside } = asked.value;
    const { count, seen, factor, offset } = arrangements;
    const figure = (sum: number) => factor * sum + offset;
    const statistic = figure(seen);
    const { counts, take } = counter(statistic);
    const isFew = count <= MOST_ENUMERATED;
    if (inputs.mode === "exact" && !isFew)
      return declined("too-large", { name: "the number of arrangements", most: "a million for all of them" });
    const all = isFew && inputs.mode !== "drawn";
    if (all) arrangements.every((sum) => take(figure(sum)));
    else {
      if (draws.value * records > MOST_WORK)
        return declined("too-large", { name: "draws", most: "a thousand million records rearranged in all" });
      const sums = arrangements.drawn(Math.round(draws.value), generatorFromSeed(seed.value).split("permutation"));
      take(statistic);
      for (const sum of sums) take(figure(sum));
    }
    const p = counts.far / counts.all;
    return succeeded({
      statistic,
      arrangements: counts.all,
      p_two_sided: p,
      p_greater: counts.large / counts.all,
      p_less: counts.small / counts.all,
      set_aside: setAside,
      ...(all ? {} : { p_error: Math.sqrt((p * (1 - p)) / counts.all), seed: seed.value }),
      chosen: all
        ? "every arrangement: there are a million or fewer"
        : `${draws.value} arrangements drawn with seed ${seed.value}: there are too many to take all`,
    });
  },
};
