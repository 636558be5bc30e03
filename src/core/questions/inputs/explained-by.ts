// y and the quantities that explain it, as most fits take them: x alone, or x1, x2, … up to eight.
import { declined, type InputSpec, type MethodInputs, type Outcome, succeeded } from "../../base/index.ts";
import { type LinearFit, linearFit, ones } from "../fits/linear-fit.ts";
import { completeInputs } from "./complete-inputs.ts";

/** Places of explaining quantities in words: as many as fits take. */
export const ORDINALS = ["first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth"];
const names = ["x", ...ORDINALS.map((_, at) => `x${at + 1}`)];

/** The inputs as a record lists them. */
export const explainedByInputs: Readonly<Record<string, InputSpec>> = {
  y: { kind: "quantities", meaning: "explained quantity" },
  x: { kind: "quantities", optional: true, meaning: "explaining quantity, where there is one alone" },
  ...Object.fromEntries(
    ORDINALS.map((ordinal, at) => [
      `x${at + 1}`,
      { kind: "quantities", optional: true, meaning: `${ordinal} explaining quantity` } satisfies InputSpec,
    ]),
  ),
};

export type ExplainedBy = {
  readonly y: Float64Array;
  readonly names: readonly string[];
  readonly columns: readonly Float64Array[];
  readonly labels: Readonly<Record<string, readonly string[]>>;
  readonly setAside: number;
};

/** The records that have y, every explaining quantity given and every label named; at least `spare` more than coefficients with a constant. */
export function explainedBy(inputs: MethodInputs, labels: readonly string[], spare: number): Outcome<ExplainedBy> {
  const given = names.filter((name) => inputs[name] !== undefined);
  if (given.length === 0) return declined("input-missing", { name: "x", meaning: "explaining quantity" });
  const complete = completeInputs(inputs, ["y", ...given], labels, { rows: given.length + 1 + spare });
  if (!complete.ok) return complete;
  const { arrays, labels: texts, setAside } = complete.value;
  const empty = new Float64Array();
  return succeeded({
    y: arrays.y ?? empty,
    names: given,
    columns: given.map((name) => arrays[name] ?? empty),
    labels: texts,
    setAside,
  });
}

/** Least squares of y on a constant and the columns. Declines a column without spread, or that says the same as others, by its name, and
 * one so small that its slope has no error that a number can say. */
export function fitOf({ y, names: given, columns }: ExplainedBy, level: number): Outcome<LinearFit> {
  const flat = columns.findIndex((column) => column.every((value) => value === column[0]));
  if (flat >= 0) return declined("no-spread", { column: given[flat] ?? "x" });
  const fit = linearFit([ones(y.length), ...columns], y, undefined, level);
  if (fit.rank <= columns.length)
    return declined("collinear", { column: fit.dependent.map((at) => given[at - 1] ?? "the constant").join(" and ") });
  return fit.inverse.every((row) => row.every(Number.isFinite))
    ? succeeded(fit)
    : declined("not-finite", { name: "the standard error of a slope" });
}
