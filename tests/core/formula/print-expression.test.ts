import { expect, it } from "vitest";
import { printExpression } from "../../../src/core/formula/index.ts";
import { amount, call, choose, group, minus, name, not, shownIn, text, two } from "./formula-of.ts";

it.each([
  [two(two(name("a"), "+", name("b")), "*", name("c")), "(a + b) * c"],
  [two(name("a"), "-", two(name("b"), "-", name("c"))), "a - (b - c)"],
  [two(two(name("a"), "-", name("b")), "-", name("c")), "a - b - c"],
  [two(minus(name("a")), "^", amount(2)), "(-a) ^ 2"],
  [minus(two(name("a"), "^", amount(2))), "-a ^ 2"],
  [two(name("a"), "^", two(amount(1), "/", amount(3))), "a ^ (1 / 3)"],
  [not(two(name("a"), "and", name("b"))), "not (a and b)"],
  [shownIn(two(amount(0.1, "mm"), "+", amount(2, "in", 0.1)), "mm"), "0.1 mm + 2 ± 0.1 in in mm"],
  [two(name("m"), "-", group("mean", name("m"), name("g"))), "m - (mean of m by g)"],
  [
    two(choose(two(name("s"), "=", text("cedar")), amount(1), amount(2)), "*", name("x")),
    '(if s = "cedar" then 1 else 2) * x',
  ],
  [call("max", name("top mass"), name("in")), "max(`top mass`, `in`)"],
])("%# is written with the brackets it needs and no others", (expression, expected) =>
  expect(printExpression(expression)).toBe(expected),
);
it("a formula of ten thousand terms prints", () => {
  let long = name("a");
  for (let i = 0; i < 10_000; i++) long = two(long, "+", name("a"));
  expect(printExpression(long)).toHaveLength(40_001);
});
