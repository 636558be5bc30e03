// A relation with all its checks at 100,000 rows, against the shortest loop that finds the same slope.
import { answerRelation } from "../../src/core/questions/index.ts";
import { quantity, tableOf } from "../support/table-of.ts";
import { type BenchLine, benchLine } from "./bench-line.ts";

const ROWS = 100_000;

/** Slope and standard error in two passes of a plain loop: no checks, no intervals, no trace. */
function plainSlope(x: Float64Array, y: Float64Array): readonly [slope: number, standardError: number] {
  let [meanX, meanY] = [0, 0];
  for (let at = 0; at < x.length; at++) {
    meanX += x[at]! / x.length;
    meanY += y[at]! / x.length;
  }
  let [sxx, sxy, syy] = [0, 0, 0];
  for (let at = 0; at < x.length; at++) {
    const [dx, dy] = [x[at]! - meanX, y[at]! - meanY];
    sxx += dx * dx;
    sxy += dx * dy;
    syy += dy * dy;
  }
  const slope = sxy / sxx;
  return [slope, Math.sqrt((syy - slope * sxy) / (x.length - 2) / sxx)];
}

/** `y against x`, answered. */
export async function relationFit(): Promise<BenchLine> {
  let state = 20260314;
  const next = () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
  const stiff = Array.from({ length: ROWS }, () => 8 + 4 * next());
  const x = quantity("stiffness_along", "GPa", stiff);
  const y = quantity(
    "final_thickness",
    "mm",
    stiff.map((value) => 4 - 0.1 * value + (next() + next() - 1) / 4),
  );
  const table = tableOf([x, y]);
  const ours = () =>
    answerRelation({
      table,
      y,
      x: [x],
      allowingFor: [],
      within: null,
      powerLaw: false,
      mask: null,
      by: null,
      asked: 1,
    });
  const finding = ours();
  const [slope] = plainSlope(x.values, y.values);
  const found = finding.kind === "refused" ? Number.NaN : (finding.estimate[0]?.value ?? Number.NaN);
  const shown = slope * 1e12; // metres a pascal as millimetres a gigapascal
  if (!(Math.abs(found - shown) <= 1e-9 * Math.abs(shown))) throw new Error(`${found} is not ${shown}`);
  return benchLine({
    name: "relation, ordinary least squares, 100,000 rows",
    baseline: "plain loop: slope and standard error only",
    ours,
    theirs: () => plainSlope(x.values, y.values),
    rounds: 9,
    repeated: 20,
    note: `with every check of a relation (influence, bends, scatter, ancestors); both find ${found.toPrecision(12)} mm/GPa`,
  });
}
