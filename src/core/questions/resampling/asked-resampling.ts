import { declined, type MethodInputs, type Outcome, succeeded } from "../../base/index.ts";
import { completeInputs } from "../inputs/complete-inputs.ts";
import { groupColumns } from "../inputs/group-columns.ts";
import { twoSamples } from "../inputs/two-samples.ts";
import { canonicalOrder, codesByPlace } from "./canonical-order.ts";
import { type ResampledStatistic, resampledStatistics } from "./resampled-statistics.ts";
import { type Units, unitsOfRecords } from "./units-of-records.ts";

/** What a run resamples; `shift` is added to a figure in the end, for x is centred before. */
export type AskedResampling = {
  readonly units: Units;
  readonly statistic: ResampledStatistic;
  readonly shift: number;
  readonly setAside: number;
};

const isStatistic = (name: unknown): name is keyof typeof resampledStatistics =>
  typeof name === "string" && Object.hasOwn(resampledStatistics, name);

function statisticOf({ statistic, a, b, y }: MethodInputs): Outcome<ResampledStatistic> {
  const usual = a !== undefined && b !== undefined ? "difference-of-means" : y === undefined ? "mean" : "slope";
  const name = statistic ?? usual;
  if (isStatistic(name)) return succeeded(resampledStatistics[name]);
  return declined("out-of-domain", {
    name: "statistic",
    needed: `one of ${Object.keys(resampledStatistics).join(", ")}`,
  });
}

/** Two groups: values as y, with x = 1 in a and 0 in b; each group is drawn from itself. */
function unitsOfGroups(inputs: MethodInputs): Outcome<{ units: Units; centre: number; setAside: number }> {
  if (inputs.cluster !== undefined)
    return declined("out-of-domain", { name: "cluster", needed: "x, or x and y, in place of two groups" });
  const samples = twoSamples(inputs, 2);
  if (!samples.ok) return samples;
  const [a, b] = [samples.value.a.sort(), samples.value.b.sort()];
  const n = a.length + b.length;
  const x = Float64Array.from({ length: n }, (_, i) => (i < a.length ? 1 : 0));
  const made = unitsOfRecords(
    x,
    Float64Array.from([...a, ...b]),
    Int32Array.from(x.keys()),
    Int32Array.of(0, a.length, n),
  );
  return succeeded({ ...made, setAside: samples.value.setAside });
}

function unitsOfColumns(
  inputs: MethodInputs,
  needsY: boolean,
): Outcome<{ units: Units; centre: number; setAside: number }> {
  const labels = inputs.cluster === undefined ? [] : ["cluster"];
  const complete = completeInputs(inputs, needsY ? ["x", "y"] : ["x"], labels, { rows: 3 });
  if (!complete.ok) return complete;
  const { x = new Float64Array(), y = new Float64Array(x.length) } = complete.value.arrays;
  const named = labels.length > 0 ? groupColumns(complete.value.labels.cluster ?? []).codes : null;
  const order = canonicalOrder(named ? [x, y, named] : [x, y]);
  const unitOf = named
    ? codesByPlace(Int32Array.from(order, (i) => named[i] as number))
    : Int32Array.from(order.keys());
  const count = unitOf.reduce((most, unit) => Math.max(most, unit + 1), 0);
  if (count < 3) return declined("too-few-records", { have: count, need: 3 });
  const inOrder = (column: Float64Array) => Float64Array.from(order, (i) => column[i] as number);
  const made = unitsOfRecords(inOrder(x), inOrder(y), unitOf, Int32Array.of(0, count));
  return succeeded({ ...made, setAside: complete.value.setAside });
}

/** The units to draw and the figure to take of them. Records stand in an order of their own, so that the order of rows changes no draw. */
export function askedResampling(inputs: MethodInputs): Outcome<AskedResampling> {
  const statistic = statisticOf(inputs);
  if (!statistic.ok) return statistic;
  const { of, moves } = statistic.value;
  const made = of === "two-groups" ? unitsOfGroups(inputs) : unitsOfColumns(inputs, of === "x-and-y");
  if (!made.ok) return made;
  const { units, centre, setAside } = made.value;
  if (!units.sums.every(Number.isFinite) || !units.values.every(Number.isFinite))
    return declined("not-finite", { name: statistic.value.meaning });
  return succeeded({ units, statistic: statistic.value, shift: moves ? centre : 0, setAside });
}
