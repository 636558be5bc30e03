import { mean } from "../../numerics/index.ts";
import { SUMS } from "./resampled-statistics.ts";

/**
 * Units that are drawn: records, or whole clusters of them. Their sums of x and y, six a unit; all values of x in rising order with the unit of each;
 * and the first unit of each stratum, with their number at the end: a unit is replaced by one of its own stratum.
 */
export type Units = {
  readonly count: number;
  readonly sums: Float64Array;
  readonly values: Float64Array;
  readonly unitOf: Int32Array;
  readonly starts: Int32Array;
};

/**
 * The units of records. x, y: of one length, less their means in what is made; unitOf: unit of each record, 0 to count - 1; starts: as in Units.
 * `centre` is the mean of x.
 */
export function unitsOfRecords(
  x: Float64Array,
  y: Float64Array,
  unitOf: Int32Array,
  starts: Int32Array,
): { readonly units: Units; readonly centre: number } {
  const [centre, centreY] = [mean(x), mean(y)];
  const count = starts.at(-1) ?? 0;
  const sums = new Float64Array(count * SUMS);
  const add = (at: number, value: number) => {
    sums[at] = (sums[at] as number) + value;
  };
  for (let i = 0; i < x.length; i++) {
    const [dx, dy, at] = [(x[i] as number) - centre, (y[i] as number) - centreY, (unitOf[i] as number) * SUMS];
    add(at, 1);
    add(at + 1, dx);
    add(at + 2, dy);
    add(at + 3, dx * dx);
    add(at + 4, dx * dy);
    add(at + 5, dy * dy);
  }
  const order = Int32Array.from(x.keys()).sort((a, b) => (x[a] as number) - (x[b] as number));
  const values = Float64Array.from(order, (i) => (x[i] as number) - centre);
  return { units: { count, sums, values, unitOf: Int32Array.from(order, (i) => unitOf[i] as number), starts }, centre };
}
