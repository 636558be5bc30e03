import type { Method, MethodInputs } from "../../base/index.ts";
import { declined, succeeded } from "../../base/index.ts";
import { sumOfSquares } from "../../numerics/index.ts";
import { leastSquaresFields, leastSquaresSpecs } from "../fits/least-squares-fields.ts";
import { linearFit, ones } from "../fits/linear-fit.ts";
import { completeInputs, plain } from "../inputs/complete-inputs.ts";
import { levelFrom, levelInput } from "../inputs/level-input.ts";
import { sources } from "./sources.ts";

const NAMES = ["x1", "x2", "x3", "x4", "x5", "x6", "x7", "x8"] as const;
const given = (inputs: MethodInputs): readonly string[] => NAMES.filter((name) => inputs[name] !== undefined);

/** How much the variance of each coefficient grows because the columns resemble each other: its part of (X'X)^-1 times its own squares. */
const inflation = (columns: readonly Float64Array[], inverse: readonly Float64Array[]): number[] =>
  columns.map((column, j) => ((inverse[j + 1] as Float64Array)[j + 1] as number) * sumOfSquares(column));

/** Least squares of y on several quantities with a constant. A quantity that says the same as the others is refused by name, never dropped. */
export const multipleLeastSquares: Method = {
  id: "ols-multiple",
  name: "Least squares on several quantities",
  answers: "relation",
  needs: { rows: 4 },
  inputs: {
    y: { kind: "quantities", meaning: "explained quantity" },
    x1: { kind: "quantities", meaning: "first explaining quantity" },
    x2: { kind: "quantities", meaning: "second" },
    x3: { kind: "quantities", optional: true, meaning: "third" },
    x4: { kind: "quantities", optional: true, meaning: "fourth" },
    x5: { kind: "quantities", optional: true, meaning: "fifth" },
    x6: { kind: "quantities", optional: true, meaning: "sixth" },
    x7: { kind: "quantities", optional: true, meaning: "seventh" },
    x8: { kind: "quantities", optional: true, meaning: "eighth" },
    level: levelInput,
    at_x1: { kind: "quantities", optional: true, meaning: "values of x1 to predict at; at_x2 … beside it" },
  },
  fields: { ...leastSquaresSpecs, vif: { meaning: "variance inflation of each explaining quantity" } },
  source: sources.draperSmith,
  run: (inputs) => {
    const level = levelFrom(inputs);
    if (!level.ok) return level;
    const names = given(inputs);
    const complete = completeInputs(inputs, ["y", ...names], [], { rows: names.length + 2 });
    if (!complete.ok) return complete;
    const y = complete.value.arrays.y as Float64Array;
    const columns = names.map((name) => complete.value.arrays[name] as Float64Array);
    const fit = linearFit([ones(y.length), ...columns], y, undefined, level.value);
    if (fit.rank <= names.length)
      return declined("collinear", {
        column: fit.dependent.map((at) => names[at - 1] ?? "the constant").join(" and "),
      });
    const lists = names.map((name) =>
      Array.isArray(inputs[`at_${name}`]) ? (inputs[`at_${name}`] as readonly number[]) : [],
    );
    const short = names.find((_, at) => (lists[at] ?? []).length !== (lists[0] ?? []).length);
    if (short !== undefined)
      return declined("out-of-domain", { name: `at_${short}`, needed: "as many values as at_x1, one a place" });
    const places = (lists[0] ?? []).map((_, row) => [1, ...lists.map((list) => Number(list[row]))]);
    return succeeded({
      ...leastSquaresFields(fit, y, true, complete.value.setAside, places),
      vif: plain(inflation(columns, fit.inverse)),
    });
  },
};
