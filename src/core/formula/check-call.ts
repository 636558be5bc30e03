// A call of the catalogue's functions: count, kinds and dimensions of the arguments.
import type { Dimension } from "../units/index.ts";
import { dimensionInWords, dimensionless, isDimensionless, sameDimension, unitFromCode } from "../units/index.ts";
import type { Expression } from "./expression.ts";
import type { ArgumentSpec, FormulaFunction } from "./formula-function.ts";
import { argumentsInWords } from "./formula-function.ts";
import type { FormulaProblem } from "./formula-problem.ts";
import { formulaProblem } from "./formula-problem.ts";
import type { ValueType } from "./value-type.ts";
import { typeInWords } from "./value-type.ts";

export type Call = Extract<Expression, { kind: "call" }>;
const moisture = unitFromCode("%MC").dimension;

/** A problem with the number of arguments, or null. */
export function wrongCount(call: Call, calls: FormulaFunction): FormulaProblem | null {
  const least = calls.arguments.filter(({ optional }) => !optional).length;
  const most = calls.repeats ? Number.POSITIVE_INFINITY : calls.arguments.length;
  const have = call.arguments.length;
  return have >= least && have <= most
    ? null
    : formulaProblem(call.nameSpan, "wrong-argument-count", { name: calls.id, have, need: argumentsInWords(calls) });
}

/** Percent of moisture may be written as plain percent: the place says which is meant. */
const fits = (given: Dimension, wanted: Dimension): boolean =>
  sameDimension(given, wanted) || (sameDimension(wanted, moisture) && isDimensionless(given));

/** The result's type, or the problems with the arguments, each at its place. types: of the arguments, none of them unknown. */
export function checkCall(
  call: Call,
  calls: FormulaFunction,
  types: readonly ValueType[],
): ValueType | readonly FormulaProblem[] {
  const found: FormulaProblem[] = [];
  const given: Dimension[] = [];
  for (const [i, type] of types.entries()) {
    const spec = (calls.arguments[i] ?? calls.arguments.at(-1)) as ArgumentSpec;
    const at = call.arguments[i] ?? call;
    const wanted = spec.takes === "same" ? (given[0] ?? dimensionless) : spec.takes;
    if (type.kind === "missing") given.push(typeof wanted === "string" ? dimensionless : wanted);
    else if (type.kind !== "quantity")
      found.push(
        formulaProblem(at, "wrong-kind", { found: typeInWords(type), needed: `a quantity (${spec.meaning})` }),
      );
    else {
      if (typeof wanted !== "string" && !fits(type.dimension, wanted)) {
        if (spec.takes === "same")
          found.push(
            formulaProblem(at, "wrong-dimension", {
              left: dimensionInWords(wanted),
              right: typeInWords(type),
              doing: calls.id,
            }),
          );
        else
          found.push(
            formulaProblem(at, "wrong-kind", {
              found: typeInWords(type),
              needed: `${dimensionInWords(wanted)} (${spec.meaning})`,
            }),
          );
      }
      given.push(type.dimension);
    }
  }
  if (found.length > 0) return found;
  const head = types[0];
  const unit = calls.unit === "first" ? (head?.kind === "quantity" ? head.unit : null) : calls.unit;
  return { kind: "quantity", dimension: calls.dimension(given), unit };
}
