import type { LabelColumn } from "../../columns/index.ts";
import { fUpperTail } from "../../numerics/index.ts";
import type { LinearFit } from "../fits/linear-fit.ts";
import { linearFit, ones } from "../fits/linear-fit.ts";
import { slopesWithinGroups } from "../fits/slopes-within-groups.ts";
import { indicatorColumns } from "../inputs/group-columns.ts";
import type { Sample } from "../sample-from-columns.ts";
import { sampleGroups } from "../sample-groups.ts";
import type { RelationDesign } from "./relation-design.ts";
import type { RelationInput } from "./relation-input.ts";

/** The slope of y on x across all records beside the slope common to the groups of one label, and whether the groups' own slopes differ. */
export type GroupsBehindSlope = {
  readonly column: LabelColumn;
  readonly pooled: LinearFit;
  readonly common: LinearFit;
  /** Place of the slope in `common`; in `pooled` it is 1. */
  readonly at: number;
  readonly contradicts: boolean;
  readonly explains: boolean;
  /** p of equal slopes; 1 where it cannot be tested. */
  readonly sameSlopes: number;
};

const MOST = 8;

/** Compares across and within for one label; null when it has not 2 to 8 groups, or too few records, or x does not vary within them. */
export function groupsBehindSlope(
  column: LabelColumn,
  x: Float64Array,
  y: Float64Array,
  sample: Sample,
): GroupsBehindSlope | null {
  const keep = Array.from(sample.index, (row, i) => ((column.codes[row] ?? -1) >= 0 ? i : -1)).filter((i) => i >= 0);
  const groups = sampleGroups(column, { ...sample, index: Int32Array.from(keep, (i) => sample.index[i] as number) });
  const count = groups.names.length;
  if (count < 2 || count > MOST || groups.counts.filter((n) => n >= 3).length < 2 || keep.length < count + 4)
    return null;
  const [ownX, ownY] = [Float64Array.from(keep, (i) => x[i] as number), Float64Array.from(keep, (i) => y[i] as number)];
  const common = linearFit([...indicatorColumns(groups.codes, count), ownX], ownY);
  const pooled = linearFit([ones(keep.length), ownX], ownY);
  if (common.rank <= count || pooled.rank < 2) return null;
  const [across, inside] = [pooled.coefficients[1] as number, common.coefficients[count] as number];
  const sure = (fit: LinearFit, at: number) => (fit.low[at] as number) > 0 || (fit.high[at] as number) < 0;
  const within = slopesWithinGroups(ownX, ownY, groups.codes, count);
  const lines = within.fits.filter((fit) => fit !== null).length;
  const df2 = keep.length - count - lines;
  const F =
    (common.residualSumOfSquares - within.residualSumOfSquares) / (lines - 1) / (within.residualSumOfSquares / df2);
  return {
    column,
    pooled,
    common,
    at: count,
    contradicts: across * inside < 0 && sure(common, count),
    explains: sure(pooled, 1) && !sure(common, count) && Math.abs(inside) < Math.abs(across) / 2,
    sameSlopes: lines > 1 && df2 > 0 && F >= 0 && Number.isFinite(F) ? fUpperTail(F, lines - 1, df2) : 1,
  };
}

/** The labels to compare by: those of the question, else every label of the table but what pieces share. One x only. */
export function groupsBehindSlopes(input: RelationInput, design: RelationDesign): readonly GroupsBehindSlope[] {
  const x = design.x[0];
  if (!x || design.x.length !== 1) return [];
  const own = [input.within, ...input.allowingFor].filter((column): column is LabelColumn => column?.kind === "label");
  const all = [...input.table.columns.values()].filter(
    (column): column is LabelColumn => column.kind === "label" && column.name !== input.table.shared,
  );
  return (own.length > 0 ? own : all).flatMap((column) => groupsBehindSlope(column, x, design.y, design.sample) ?? []);
}
