// Operators of the little language behind closureFunction: each builds one closure out of its operands' closures.
import { power } from "../base/index.ts";
import type { Run } from "./closure-scope.ts";

const num = (value: unknown) => value as number;

export const unaryOperators: ReadonlyMap<string, (f: Run) => Run> = new Map<string, (f: Run) => Run>([
  ["-", (f) => (e) => -num(f(e))],
  ["+", (f) => (e) => +num(f(e))],
  ["!", (f) => (e) => !f(e)],
  ["~", (f) => (e) => ~num(f(e))],
  ["typeof", (f) => (e) => typeof f(e)],
  ["void", (f) => (e) => void f(e)],
]);

type Two = (a: Run, b: Run) => Run;

/** Operators of two operands, lazy ones included. */
export const closureOperators: ReadonlyMap<string, Two> = new Map<string, Two>([
  ["+", (a, b) => (e) => num(a(e)) + num(b(e))],
  ["-", (a, b) => (e) => num(a(e)) - num(b(e))],
  ["*", (a, b) => (e) => num(a(e)) * num(b(e))],
  ["/", (a, b) => (e) => num(a(e)) / num(b(e))],
  ["%", (a, b) => (e) => num(a(e)) % num(b(e))],
  ["**", (a, b) => (e) => power(num(a(e)), num(b(e)))],
  ["<", (a, b) => (e) => num(a(e)) < num(b(e))],
  [">", (a, b) => (e) => num(a(e)) > num(b(e))],
  ["<=", (a, b) => (e) => num(a(e)) <= num(b(e))],
  [">=", (a, b) => (e) => num(a(e)) >= num(b(e))],
  // biome-ignore lint/suspicious/noDoubleEquals: arquero's comparison with null means null or undefined
  ["==", (a, b) => (e) => a(e) == b(e)],
  // biome-ignore lint/suspicious/noDoubleEquals: as above
  ["!=", (a, b) => (e) => a(e) != b(e)],
  ["===", (a, b) => (e) => a(e) === b(e)],
  ["!==", (a, b) => (e) => a(e) !== b(e)],
  ["&", (a, b) => (e) => num(a(e)) & num(b(e))],
  ["|", (a, b) => (e) => num(a(e)) | num(b(e))],
  ["^", (a, b) => (e) => num(a(e)) ^ num(b(e))],
  ["<<", (a, b) => (e) => num(a(e)) << num(b(e))],
  [">>", (a, b) => (e) => num(a(e)) >> num(b(e))],
  [">>>", (a, b) => (e) => num(a(e)) >>> num(b(e))],
  ["in", (a, b) => (e) => (a(e) as string) in (b(e) as object)],
  ["instanceof", (a, b) => (e) => a(e) instanceof (b(e) as () => void)],
  ["&&", (a, b) => (e) => a(e) && b(e)],
  ["||", (a, b) => (e) => a(e) || b(e)],
  ["??", (a, b) => (e) => a(e) ?? b(e)],
]);
