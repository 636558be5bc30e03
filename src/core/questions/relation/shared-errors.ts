import type { Contribution, QuantityColumn } from "../../columns/index.ts";
import { errorsOf } from "./errors-of.ts";
import type { RelationDesign } from "./relation-design.ts";
import type { RelationInput } from "./relation-input.ts";

/** One measurement that y and an x were both computed from: what its standard uncertainty does to each at every record, signed, in the design's terms. */
export type SharedError = { readonly source: string; readonly y: Float64Array; readonly x: Float64Array };

/**
 * The errors that y and the x at place `which` have in common; none where no uncertainty is stated. Relative for a power law; a record
 * without a stated uncertainty has none.
 */
export function sharedErrors(input: RelationInput, design: RelationDesign, which: number): readonly SharedError[] {
  const x = input.x[which];
  if (!x) return [];
  const terms = (column: QuantityColumn, { values }: Contribution) =>
    Float64Array.from(design.sample.index, (row) => {
      const error = (values[row] as number) / (input.powerLaw ? (column.values[row] as number) : 1);
      return Number.isFinite(error) ? error : 0;
    });
  const [own, other] = [errorsOf(x), errorsOf(input.y)];
  return [...own].flatMap(([source, adds]) => {
    const there = other.get(source);
    return there ? [{ source, x: terms(x, adds), y: terms(input.y, there) }] : [];
  });
}

/** Mean over the records of what the shared errors add to the product of y and x: the covariance that is no law of nature. */
export function errorCovariance(errors: readonly SharedError[]): number {
  const n = errors[0]?.x.length ?? 1;
  let sum = 0;
  for (const { x, y } of errors) for (let i = 0; i < n; i++) sum += (x[i] as number) * (y[i] as number);
  return sum / n;
}
