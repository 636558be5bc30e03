import { expect, it } from "vitest";
import type { Expression } from "../../../src/core/formula/index.ts";
import {
  amount,
  call,
  checked,
  choose,
  day,
  group,
  labels,
  measured,
  minus,
  name,
  not,
  problemsOf,
  shownIn,
  tableOf,
  text,
  two,
} from "./formula-of.ts";

const table = tableOf(
  2,
  measured("thickness", "mm", [2, 3]),
  measured("stiffness_across", "GPa", [1, 2]),
  measured("mass", "g", [1, 2]),
  labels("species", ["cedar", "spruce"]),
  measured("__proto__", "mm", [1, 2]),
);
const codes = (expression: Expression) => problemsOf(expression, table).map(({ code }) => code);

it("adding mm to GPa is a problem at the operator, in words of what they are", () => {
  const [problem] = problemsOf(two(name("thickness"), "+", name("stiffness_across")), table);
  expect(problem).toEqual({
    span: { from: 7, to: 8 },
    code: "wrong-dimension",
    facts: { left: "length", right: "pressure", doing: "Adding" },
  });
});
it("a name that is nearly right brings the name that was meant", () =>
  expect(problemsOf(name("stifness_acros"), table)[0]).toMatchObject({
    code: "unknown-column",
    facts: { name: "stifness_acros", table: "tops" },
    suggestion: "stiffness_across",
  }));
it("a name that objects know is an ordinary name", () => {
  expect(codes(name("__proto__"))).toEqual([]);
  expect(codes(name("constructor"))).toEqual(["unknown-column"]);
  expect(codes(call("toString", amount(1)))).toEqual(["unknown-function"]);
});
it("without a table an unknown name is unknown as such", () =>
  expect(problemsOf(name("loss"), null)[0]?.code).toBe("unknown-name"));
it("each problem is told, and a part with a problem raises no further ones", () =>
  expect(codes(two(two(name("x1"), "+", name("thickness")), "*", two(name("x2"), "+", name("mass"))))).toEqual([
    "unknown-column",
    "unknown-column",
  ]));
it.each<[string, Expression, string[]]>([
  ["a length and a plain number do not add", two(name("thickness"), "+", amount(2)), ["wrong-dimension"]],
  ["a length compares with a length in inches", two(name("thickness"), "<", amount(0.1, "in")), []],
  ["a label compares with a text", two(name("species"), "=", text("cedar")), []],
  ["a label has no order", two(name("species"), "<", text("cedar")), ["wrong-kind"]],
  ["a label is no quantity", two(name("species"), "*", amount(2)), ["wrong-kind"]],
  ["not needs a condition", not(name("mass")), ["wrong-kind"]],
  ["if needs a condition", choose(name("mass"), amount(1), amount(2)), ["wrong-kind"]],
  [
    "both branches are of one kind",
    choose(two(name("mass"), ">", amount(1, "g")), name("mass"), name("thickness")),
    ["wrong-dimension"],
  ],
  ["pressure is not shown in mm", shownIn(name("stiffness_across"), "mm"), ["wrong-dimension"]],
  ["an unknown unit", amount(2, "furlongs"), ["unknown-unit"]],
  [
    "a computed exponent on a length",
    two(name("thickness"), "^", two(name("mass"), "/", name("mass"))),
    ["wrong-kind"],
  ],
  ["too few arguments", call("density", name("mass")), ["wrong-argument-count"]],
  ["an argument of another dimension", call("sound_speed", name("mass"), amount(400, "kg/m3")), ["wrong-kind"]],
  ["min of unlike quantities", call("min", name("mass"), name("thickness")), ["wrong-dimension"]],
  ["a mean of labels", group("mean", name("species")), ["wrong-kind"]],
  ["groups by a quantity", group("mean", name("mass"), name("thickness")), ["wrong-kind"]],
  ["a count of labels", group("count", name("species"), name("species")), []],
  ["a day that does not exist", day("2023-02-30"), ["syntax"]],
  ["an exponent beyond what a unit can say", two(name("thickness"), "^", amount(200)), ["limit"]],
])("%s", (_, expression, expected) => expect(codes(expression)).toEqual(expected));
it("the cube root of a volume is a length, also by sqrt and a fraction", () => {
  const volume = two(name("thickness"), "^", amount(3));
  expect(checked(two(volume, "^", two(amount(1), "/", amount(3))), table).type).toMatchObject({
    dimension: { length: [1, 1] },
  });
  expect(checked(call("sqrt", two(name("thickness"), "*", name("thickness"))), table).unit).toBe("m");
  expect(checked(two(name("thickness"), "^", amount(0.5)), table).type).toMatchObject({
    dimension: { length: [1, 2] },
  });
});
it("a product with a plain number is shown in the quantity's own unit", () =>
  expect(checked(two(amount(2), "*", name("thickness")), table).unit).toBe("mm"));
it("brackets deeper than the limit are a problem at their place, and no crash", () => {
  let deep: Expression = name("mass");
  for (let i = 0; i < 5000; i++) deep = minus(deep);
  expect(codes(deep)).toEqual(["limit"]);
});
it("ten thousand terms are checked, and more operators than the limit are told", () => {
  let long: Expression = name("mass");
  for (let i = 0; i < 20_001; i++) {
    long = two(long, "+", name("mass"));
    if (i === 9_999) expect(codes(long)).toEqual([]);
  }
  expect(codes(long)).toEqual(["limit"]);
});
