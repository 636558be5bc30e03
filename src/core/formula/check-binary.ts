// What two operands make together.
import type { ProblemCode } from "../base/index.ts";
import type { Dimension } from "../units/index.ts";
import {
  dimensionless,
  divideDimensions,
  isDimensionless,
  multiplyDimensions,
  raiseDimension,
  sameDimension,
  unitFromCode,
} from "../units/index.ts";
import { exactResult } from "./exact-number.ts";
import type { BinaryOperator } from "./expression.ts";
import type { Step } from "./typed-expression.ts";
import type { QuantityType, ValueType } from "./value-type.ts";
import { plainNumber, typeInWords } from "./value-type.ts";

/** The type and the steps that follow the operands' own, or what is wrong: at the operator, or at one side. */
export type BinaryCheck =
  | { readonly ok: true; readonly type: ValueType; readonly steps: readonly Step[] }
  | {
      readonly ok: false;
      readonly at: "operator" | "left" | "right";
      readonly code: ProblemCode;
      readonly facts: Readonly<Record<string, string>>;
    };

const SECONDS_PER_DAY = 86_400;
const time = unitFromCode("s").dimension;
const yesNo: ValueType = { kind: "yes-no" };
const DOING: Partial<Record<BinaryOperator, string>> = { "+": "Adding", "-": "Subtracting" };

const unlike = (operator: BinaryOperator, left: ValueType, right: ValueType): BinaryCheck => ({
  ok: false,
  at: "operator",
  code: "wrong-dimension",
  facts: { left: typeInWords(left), right: typeInWords(right), doing: DOING[operator] ?? "Comparing" },
});
const wrongKind = (at: "left" | "right", found: ValueType, needed: string): BinaryCheck => ({
  ok: false,
  at,
  code: "wrong-kind",
  facts: { found: typeInWords(found), needed },
});

const productUnit = (left: QuantityType, right: QuantityType, operator: "*" | "/"): string | null => {
  if (isDimensionless(right.dimension)) return isDimensionless(left.dimension) ? "1" : left.unit;
  return operator === "*" && isDimensionless(left.dimension) ? right.unit : null;
};

function power(left: QuantityType, right: QuantityType, step: Step): BinaryCheck {
  if (!isDimensionless(right.dimension)) return wrongKind("right", right, "a plain number");
  if (right.constant) {
    const [n, d] = right.constant;
    const whole = n === d;
    return {
      ok: true,
      type: {
        kind: "quantity",
        dimension: raiseDimension(left.dimension, right.constant),
        unit: isDimensionless(left.dimension) ? "1" : whole ? left.unit : null,
      },
      steps: [{ does: "power", exponent: n / d }],
    };
  }
  if (isDimensionless(left.dimension)) return { ok: true, type: plainNumber, steps: [step] };
  return {
    ok: false,
    at: "right",
    code: "wrong-kind",
    facts: { found: "an exponent that is computed", needed: "a number such as 2, 0.5 or 1/3" },
  };
}

function arithmetic(operator: "+" | "-" | "*" | "/" | "^", left: ValueType, right: ValueType): BinaryCheck {
  const step: Step = { does: "binary", operator };
  if (left.kind === "date" && (operator === "+" || operator === "-")) {
    if (right.kind === "date" && operator === "-")
      return {
        ok: true,
        type: { kind: "quantity", dimension: time, unit: "d" },
        steps: [step, { does: "scale", factor: SECONDS_PER_DAY }],
      };
    if (right.kind === "quantity" && sameDimension(right.dimension, time))
      return { ok: true, type: left, steps: [{ does: "scale", factor: 1 / SECONDS_PER_DAY }, step] };
    return unlike(operator, left, right);
  }
  if (left.kind !== "quantity") return wrongKind("left", left, "a quantity");
  if (right.kind !== "quantity") return wrongKind("right", right, "a quantity");
  if (operator === "^") return power(left, right, step);
  const exact = left.constant && right.constant ? exactResult(operator, left.constant, right.constant) : undefined;
  const constant = exact ? { constant: exact } : {};
  if (operator === "*" || operator === "/") {
    const combined: (a: Dimension, b: Dimension) => Dimension =
      operator === "*" ? multiplyDimensions : divideDimensions;
    return {
      ok: true,
      type: {
        kind: "quantity",
        dimension: combined(left.dimension, right.dimension),
        unit: productUnit(left, right, operator),
        ...constant,
      },
      steps: [step],
    };
  }
  if (!sameDimension(left.dimension, right.dimension)) return unlike(operator, left, right);
  return {
    ok: true,
    type: { kind: "quantity", dimension: left.dimension, unit: left.unit, ...constant },
    steps: [step],
  };
}

function comparison(operator: BinaryOperator, left: ValueType, right: ValueType): BinaryCheck {
  const equality = operator === "=" || operator === "!=";
  if (left.kind === "missing" || right.kind === "missing") {
    if (!equality)
      return wrongKind(left.kind === "missing" ? "left" : "right", { kind: "missing" }, "something to compare with");
    return { ok: true, type: yesNo, steps: [{ does: "is-missing", yes: operator === "=" }] };
  }
  if (left.kind !== right.kind) return unlike(operator, left, right);
  if (left.kind === "quantity" && right.kind === "quantity" && !sameDimension(left.dimension, right.dimension))
    return unlike(operator, left, right);
  if (left.kind === "grade" && right.kind === "grade" && left.levels.join("\n") !== right.levels.join("\n"))
    return unlike(operator, left, right);
  if (!equality && (left.kind === "text" || left.kind === "yes-no"))
    return wrongKind("left", left, "something that has an order");
  return { ok: true, type: yesNo, steps: [{ does: "binary", operator }] };
}

/** The type of `left operator right`, with the steps that compute it once both operands are on the stack. */
export function checkBinary(operator: BinaryOperator, left: ValueType, right: ValueType): BinaryCheck {
  switch (operator) {
    case "and":
    case "or":
      if (left.kind !== "yes-no") return wrongKind("left", left, "a condition");
      if (right.kind !== "yes-no") return wrongKind("right", right, "a condition");
      return { ok: true, type: yesNo, steps: [{ does: "binary", operator }] };
    case "+":
    case "-":
    case "*":
    case "/":
    case "^":
      return arithmetic(operator, left, right);
    default:
      return comparison(operator, left, right);
  }
}

/** Whether a dimension has grown beyond what a unit can be written with. exponent: the largest that is allowed. */
export const isTooHigh = (dimension: Dimension, exponent: number): boolean =>
  dimension !== dimensionless &&
  Object.values(dimension).some((each) => Math.abs(each[0]) > exponent * each[1] || each[1] > exponent);
