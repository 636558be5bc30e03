import type { Column, GradeColumn, LabelColumn } from "../../columns/index.ts";
import { quotientUnit, scaleFactor } from "../../units/index.ts";
import { ones } from "../fits/linear-fit.ts";
import { indicatorColumns } from "../inputs/group-columns.ts";
import type { Sample } from "../sample-from-columns.ts";
import { sampled, sampleFromColumns } from "../sample-from-columns.ts";
import type { SampleGroups } from "../sample-groups.ts";
import { sampleGroups } from "../sample-groups.ts";
import { numericValues } from "./numeric-values.ts";
import type { RelationInput } from "./relation-input.ts";

/** The numbers of a relation: y, the columns of its design, and where the slopes stand in it. In logarithms for a power law, else SI. */
export type RelationDesign = {
  readonly sample: Sample;
  readonly y: Float64Array;
  readonly x: readonly Float64Array[];
  readonly columns: readonly Float64Array[];
  /** Place of each x in `columns`; the columns before the first are constants. */
  readonly slopes: readonly number[];
  /** Groups whose constants stand first, with the label they come from. */
  readonly groups: (SampleGroups & { readonly column: LabelColumn | GradeColumn }) | null;
  /** A label with more groups than can each have a constant; the design then has one constant only and must be refused. */
  readonly tooManyGroups: LabelColumn | GradeColumn | null;
  /** What turns each slope into its shown unit, and that unit. */
  readonly shown: readonly { readonly factor: number; readonly unit: string }[];
};

/** More constants than this leave nothing to tell and cost the square in time. */
export const MOST_GROUPS = 100;

const isGrouping = (column: Column): column is LabelColumn | GradeColumn =>
  column.kind === "label" || column.kind === "grade";

/** Builds the design of y on x with constants for the groups of every label allowed for. No fit yet, and no check of what the data need. */
export function relationDesign(input: RelationInput): RelationDesign {
  const labels = [...(input.within ? [input.within] : []), ...input.allowingFor].filter(isGrouping);
  const covariates = input.allowingFor.filter((column) => !isGrouping(column));
  const positive = input.powerLaw ? [input.y, ...input.x] : [];
  const sample = sampleFromColumns(input.table, [input.y, ...input.x, ...labels, ...covariates], input.mask, positive);
  const into = (values: ArrayLike<number>) =>
    input.powerLaw ? sampled(values, sample).map(Math.log) : sampled(values, sample);
  const grouped = labels.map((column) => ({ column, ...sampleGroups(column, sample) }));
  const first = grouped[0];
  const tooMany = grouped.find((group) => group.names.length > MOST_GROUPS);
  const constants = first && !tooMany ? indicatorColumns(first.codes, first.names.length) : [ones(sample.rows.length)];
  const further = (tooMany ? [] : grouped.slice(1)).flatMap((group) =>
    indicatorColumns(group.codes, group.names.length).slice(1),
  );
  const besides = covariates.flatMap((column) => {
    const values = numericValues(column);
    return values ? [sampled(values, sample)] : [];
  });
  const before = [...constants, ...further, ...besides];
  const x = input.x.map((column) => into(column.values));
  return {
    sample,
    y: into(input.y.values),
    x,
    columns: [...before, ...x],
    slopes: x.map((_, at) => before.length + at),
    groups: first ?? null,
    tooManyGroups: tooMany?.column ?? null,
    shown: input.x.map((column) =>
      input.powerLaw
        ? { factor: 1, unit: "1" }
        : {
            factor: scaleFactor(column.unit) / scaleFactor(input.y.unit),
            unit: quotientUnit(input.y.unit, column.unit),
          },
    ),
  };
}
