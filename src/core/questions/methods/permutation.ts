import type { Method, MethodInputs, Outcome } from "../../base/index.ts";
import { declined, succeeded } from "../../base/index.ts";
import { generatorFromSeed } from "../../numerics/index.ts";
import { completeInputs } from "../inputs/complete-inputs.ts";
import { groupColumns } from "../inputs/group-columns.ts";
import { twoSamples } from "../inputs/two-samples.ts";
import { type Arrangements, flips, type PairingFigure, pairings } from "../resampling/arrangements.ts";
import { drawsFrom, drawsInputs } from "../resampling/draws-inputs.ts";
import { type SplitFigure, splitFigures, splits } from "../resampling/splits.ts";

/** Up to the first number of arrangements all are taken; up to the second (10 records in every order) where a run asks for all. */
const FEW = 1_000_000;
const MOST_ARRANGEMENTS = 4_000_000;
const MOST_WORK = 1e9;
/** Figures that differ by less than this share of the largest that could be are ties that rounding has parted. */
const TIE = 1e-12;

const pairingFigures: readonly string[] = ["pearson", "spearman", "slope"];
const isPairing = (name: unknown): name is PairingFigure => typeof name === "string" && pairingFigures.includes(name);
const isSplit = (name: unknown): name is SplitFigure => typeof name === "string" && splitFigures.includes(name);

type Asked = { readonly arrangements: Arrangements; readonly records: number; readonly setAside: number };

function ofDifferences(inputs: MethodInputs): Outcome<Asked> {
  const pairs = completeInputs(inputs, ["a", "b"], [], { rows: 2 });
  if (!pairs.ok) return pairs;
  const { a, b } = pairs.value.arrays as { a: Float64Array; b: Float64Array };
  const differences = a.map((value, at) => value - (b[at] as number));
  if (differences.every((value) => value === 0)) return declined("no-spread", { column: "difference" });
  return succeeded({ arrangements: flips(differences), records: a.length, setAside: pairs.value.setAside });
}

function ofTwoGroups(inputs: MethodInputs, figure: SplitFigure): Outcome<Asked> {
  const samples = twoSamples(inputs, 1);
  if (!samples.ok) return samples;
  const { a, b, setAside } = samples.value;
  const records = a.length + b.length;
  if (records < 3) return declined("too-few-records", { have: records, need: 3 });
  if (a.every((value) => value === a[0]) && b.every((value) => value === a[0]))
    return declined("no-spread", { column: "values" });
  return succeeded({ arrangements: splits(a, b, figure), records, setAside });
}

function ofPairs(inputs: MethodInputs, figure: PairingFigure): Outcome<Asked> {
  const labels = inputs.block === undefined ? [] : ["block"];
  const complete = completeInputs(inputs, ["x", "y"], labels, { rows: 3, distinct: { x: 2, y: 2 } });
  if (!complete.ok) return complete;
  const { x, y } = complete.value.arrays as { x: Float64Array; y: Float64Array };
  const { codes } = groupColumns(complete.value.labels.block ?? Array.from(x, () => ""));
  const arrangements = pairings(x, y, codes, figure);
  if (!arrangements) return declined("no-spread", { column: "x or y within blocks" });
  if (arrangements.count === 1) return declined("too-few-records", { have: 1, need: 2 });
  return succeeded({ arrangements, records: x.length, setAside: complete.value.setAside });
}

function askedOf(inputs: MethodInputs): Outcome<Asked> {
  const name = inputs.statistic ?? (inputs.x === undefined ? "difference-of-means" : "pearson");
  if (isPairing(name)) return ofPairs(inputs, name);
  if (!isSplit(name))
    return declined("out-of-domain", {
      name: "statistic",
      needed: `one of ${[...splitFigures, ...pairingFigures].join(", ")}`,
    });
  return inputs.paired === true ? ofDifferences(inputs) : ofTwoGroups(inputs, name);
}

/** How many figures are as far from zero, as large, and as small as the one seen, ties counted in. */
function countsOf(figures: Float64Array, seen: number, slack: number) {
  let [far, large, small] = [0, 0, 0];
  for (let i = 0; i < figures.length; i++) {
    const figure = figures[i] as number;
    if (Math.abs(figure) >= Math.abs(seen) - slack) far++;
    if (figure >= seen - slack) large++;
    if (figure <= seen + slack) small++;
  }
  return { far, large, small };
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
    paired: {
      kind: "yes-no",
      optional: true,
      meaning: "a and b are pairs: the signs of their differences are turned, and the figure is the mean difference",
    },
    x: { kind: "quantities", optional: true, meaning: "one quantity, in place of two groups" },
    y: { kind: "quantities", optional: true, meaning: "the other; it is rearranged" },
    block: {
      kind: "labels",
      optional: true,
      meaning: "y is rearranged only among records of one block, and means of blocks are taken out",
    },
    statistic: {
      kind: "choice",
      choices: [...splitFigures, ...pairingFigures],
      optional: true,
      meaning: "difference of means for two groups, pearson for two quantities, unless given",
    },
    ...drawsInputs("arrangements", "a million or fewer"),
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
    const [asked, drawing] = [askedOf(inputs), drawsFrom(inputs)];
    if (!asked.ok) return asked;
    if (!drawing.ok) return drawing;
    const { arrangements, records, setAside } = asked.value;
    const { mode, draws, seed } = drawing.value;
    const { count, seen, scale } = arrangements;
    if (!Number.isFinite(seen) || !Number.isFinite(scale)) return declined("not-finite", { name: "the statistic" });
    const isAll = mode === "exact" || (mode === null && count <= FEW);
    if (isAll && count > MOST_ARRANGEMENTS)
      return declined("too-large", { name: "the number of arrangements", most: "four million for all of them" });
    if (!isAll && draws * records > MOST_WORK)
      return declined("too-large", { name: "draws times records", most: "a thousand million" });
    const figures = isAll
      ? arrangements.every()
      : arrangements.drawn(draws, generatorFromSeed(seed).split("permutation"));
    const { far, large, small } = countsOf(figures, seen, TIE * scale);
    // Drawn arrangements are looked at beside the one seen, so that no p is zero.
    const [own, all] = isAll ? [0, count] : [1, draws + 1];
    const p = (far + own) / all;
    return succeeded({
      statistic: seen,
      arrangements: all,
      p_two_sided: p,
      p_greater: (large + own) / all,
      p_less: (small + own) / all,
      set_aside: setAside,
      ...(isAll ? {} : { p_error: Math.sqrt((p * (1 - p)) / all), seed }),
      chosen: isAll
        ? "every arrangement, for there are few"
        : `${draws} arrangements drawn with seed ${seed}, p = (count + 1) / (draws + 1)${count > FEW ? ": there are too many to take all" : ""}`,
    });
  },
};
