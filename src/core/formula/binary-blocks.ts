// The operators over one block of rows. Missing is NaN and passes through arithmetic by itself; comparisons pass it on.
import { power } from "../base/index.ts";
import type { BinaryOperator } from "./expression.ts";

type Block = (a: Float64Array, b: Float64Array, out: Float64Array, count: number) => void;
const at = (values: Float64Array, i: number): number => values[i] as number;

/** 1, 0, or NaN where either side is missing. */
const compared =
  (holds: (a: number, b: number) => boolean): Block =>
  (a, b, out, count) => {
    for (let i = 0; i < count; i++) {
      const [x, y] = [at(a, i), at(b, i)];
      out[i] = Number.isNaN(x) || Number.isNaN(y) ? Number.NaN : holds(x, y) ? 1 : 0;
    }
  };

/** Values of `left operator right`, row by row. `and`, `or`: one side that decides is enough, even where the other is missing. */
export const binaryBlocks: { readonly [O in BinaryOperator]: Block } = {
  "+": (a, b, out, count) => {
    for (let i = 0; i < count; i++) out[i] = at(a, i) + at(b, i);
  },
  "-": (a, b, out, count) => {
    for (let i = 0; i < count; i++) out[i] = at(a, i) - at(b, i);
  },
  "*": (a, b, out, count) => {
    for (let i = 0; i < count; i++) out[i] = at(a, i) * at(b, i);
  },
  "/": (a, b, out, count) => {
    for (let i = 0; i < count; i++) out[i] = at(a, i) / at(b, i);
  },
  // Missing to the power 0, and 1 to a missing power, are missing, whatever the platform says.
  "^": (a, b, out, count) => {
    for (let i = 0; i < count; i++) out[i] = Number.isNaN(at(a, i)) ? Number.NaN : power(at(a, i), at(b, i));
  },
  "=": compared((x, y) => x === y),
  "!=": compared((x, y) => x !== y),
  "<": compared((x, y) => x < y),
  "<=": compared((x, y) => x <= y),
  ">": compared((x, y) => x > y),
  ">=": compared((x, y) => x >= y),
  and: (a, b, out, count) => {
    for (let i = 0; i < count; i++) out[i] = at(a, i) === 0 || at(b, i) === 0 ? 0 : at(a, i) * at(b, i);
  },
  or: (a, b, out, count) => {
    for (let i = 0; i < count; i++) out[i] = at(a, i) === 1 || at(b, i) === 1 ? 1 : at(a, i) + at(b, i);
  },
};

/** Partial derivatives by the left and by the right side; nothing for what is no arithmetic. */
export const binaryPartials: { readonly [O in BinaryOperator]?: (x: number, y: number) => readonly [number, number] } =
  {
    "+": () => [1, 1],
    "-": () => [1, -1],
    "*": (x, y) => [y, x],
    "/": (x, y) => [1 / y, -x / (y * y)],
    "^": (x, y) => [y * power(x, y - 1), x > 0 ? Math.log(x) * power(x, y) : 0],
  };
