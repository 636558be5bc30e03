import fc from "fast-check";
import { expect, it } from "vitest";
import type { Amounts } from "../../../src/core/formula/index.ts";
import { conditionFromExpression, maskFromExpression, valueFromExpression } from "../../../src/core/formula/index.ts";
import { closeTo } from "../../support/close-to.ts";
import { law } from "../../support/law.ts";
import {
  amount,
  call,
  checked,
  choose,
  computed,
  day,
  group,
  labels,
  measured,
  minus,
  missing,
  name,
  not,
  noValues,
  quantity,
  shownIn,
  tableOf,
  text,
  two,
  withFormula,
} from "./formula-of.ts";

const boards = tableOf(
  4,
  measured("mass", "g", [182.4, 190, null, 170], 0.5),
  measured("length", "mm", [550, 550, 550, 550], 0.5),
  measured("width", "mm", [205, 205, 205, 205], 0.5),
  measured("thickness", "mm", [4.02, 4.1, 3.9, 3.8], 0.02),
  measured("f_long", "Hz", [61.3, 60, 62, 63]),
  labels("species", ["spruce", "cedar", "cedar", "spruce"]),
);
const relative = (column: { values: Float64Array; uncertainty: Float64Array | null }, row = 0) =>
  (column.uncertainty?.[row] ?? Number.NaN) / (column.values[row] ?? Number.NaN);
const density = two(name("mass"), "/", two(two(name("length"), "*", name("width")), "*", name("thickness")));

// 0.1824 / (0.55 * 0.205 * 0.00402) = 402.42 kg/m3, by hand
it("density is mass over volume, shown in kg/m3", () => {
  const column = quantity(boards, density);
  closeTo(column.values[0] ?? 0, 402.4222, 1e-6);
  expect(column.unit).toBe("kg/m3");
});
it("missing in, missing out", () => {
  const column = quantity(boards, density);
  expect([column.values[2], column.uncertainty?.[2]]).toEqual([Number.NaN, Number.NaN]);
});
it("the function density is the same as its formula", () =>
  closeTo(
    quantity(boards, call("density", name("mass"), name("length"), name("width"), name("thickness"))).values[1] ?? 0,
    quantity(boards, density).values[1] ?? 0,
    1e-15,
  ));
// JCGM 100:2008, 5.1.6: of a product of powers the relative variances add, each times the square of its power
it("relative uncertainties of a product add in squares", () =>
  closeTo(relative(quantity(boards, density)), Math.hypot(0.5 / 182.4, 0.5 / 550, 0.5 / 205, 0.02 / 4.02), 1e-12));
it("a thickness cubed has three times its relative uncertainty, however it is written", () => {
  const three = (3 * 0.02) / 4.02;
  const h = name("thickness");
  closeTo(relative(quantity(boards, two(h, "^", amount(3)))), three, 1e-12);
  closeTo(relative(quantity(boards, two(two(h, "*", h), "*", h))), three, 1e-12);
  const chained = withFormula(boards, "square", two(h, "*", h));
  closeTo(relative(quantity(chained, two(name("square"), "*", h))), three, 1e-12);
});
it("a quantity less itself is certain, also through another column", () => {
  const chained = withFormula(boards, "twice", two(amount(2), "*", name("thickness")));
  expect([
    ...(quantity(chained, two(name("twice"), "-", two(name("thickness"), "+", name("thickness")))).uncertainty ?? [9]),
  ]).toEqual([0, 0, 0, 0]);
});
// E = 0.94641465 m f2 L3 / (b h3): relative sensitivities 1, 2, 3, -1, -3
it("uncertainty goes through a function of the catalogue by its partial derivatives", () => {
  const column = quantity(
    boards,
    call("bar_stiffness", name("mass"), name("length"), name("width"), name("thickness"), name("f_long")),
  );
  closeTo(relative(column), Math.hypot(0.5 / 182.4, (3 * 0.5) / 550, 0.5 / 205, (3 * 0.02) / 4.02), 1e-12);
  expect(column.unit).toBe("Pa");
});
// D = E h3 / 12
it("a function without known derivatives is differentiated numerically, to better than 1e-8", () => {
  closeTo(
    relative(quantity(boards, call("bending_stiffness", amount(10, "GPa"), name("thickness")))),
    (3 * 0.02) / 4.02,
    1e-8,
  );
});
it("radiation ratio out of a modulus and a density counts the thickness once", () => {
  const E = call("bar_stiffness", name("mass"), name("length"), name("width"), name("thickness"), name("f_long"));
  const two_ = withFormula(withFormula(boards, "E", E), "density", density);
  // R = sqrt(E/rho^3): m^-1, L^3, b^1, h^0
  closeTo(
    relative(quantity(two_, call("radiation_ratio", name("E"), name("density")))),
    Math.hypot(0.5 / 182.4, (3 * 0.5) / 550, 0.5 / 205),
    1e-12,
  );
});
it("a column knows its parents and the measured columns it rests on", () => {
  const chained = withFormula(boards, "density", density);
  expect(computed(chained, "x", two(name("density"), "*", name("thickness"))).origin).toMatchObject({
    parents: ["density", "thickness"],
    roots: ["length", "mass", "thickness", "width"],
  });
});
law(
  "measuring in inches or in mm gives the same to 1e-12",
  [fc.array(fc.double({ min: 0.5, max: 9, noNaN: true }), { minLength: 1, maxLength: 5 })],
  (thick) => {
    const formula = call("sqrt", two(two(name("h"), "^", amount(3)), "/", two(name("h"), "+", amount(3 / 32, "in"))));
    const mm = quantity(tableOf(thick.length, measured("h", "mm", thick, 0.02)), formula);
    const inch = quantity(
      tableOf(
        thick.length,
        measured(
          "h",
          "[in_i]",
          thick.map((h) => h / 25.4),
          0.02 / 25.4,
        ),
      ),
      formula,
    );
    for (const row of thick.keys()) {
      closeTo(inch.values[row] ?? 0, mm.values[row] ?? 1, 1e-12);
      closeTo(inch.uncertainty?.[row] ?? 0, mm.uncertainty?.[row] ?? 1, 1e-12);
    }
  },
);
law(
  "turning the order of the rows round turns the results round and changes none",
  [fc.array(fc.option(fc.double({ min: -9, max: 9, noNaN: true })), { minLength: 1, maxLength: 3000 })],
  (values) => {
    const formula = two(two(name("x"), "*", name("x")), "-", two(name("x"), "*", amount(1 / 3, "mm")));
    const forth = quantity(tableOf(values.length, measured("x", "mm", values, 0.1)), two(formula, "/", name("x")));
    const back = quantity(
      tableOf(values.length, measured("x", "mm", [...values].reverse(), 0.1)),
      two(formula, "/", name("x")),
    );
    expect([...back.values].reverse()).toEqual([...forth.values]);
    expect([...(back.uncertainty ?? [])].reverse()).toEqual([...(forth.uncertainty ?? [])]);
  },
  50,
);
it("one over zero, zero over zero and what is too large are missing, and stay so", () => {
  const table = tableOf(2, measured("x", "1", [0, 1e200]));
  expect([...quantity(table, two(amount(1), "/", two(amount(1), "/", name("x")))).values]).toEqual([Number.NaN, 1e200]);
  expect(quantity(table, two(name("x"), "/", name("x"))).values[0]).toBeNaN();
  expect(quantity(table, two(amount(1), "/", two(name("x"), "*", name("x")))).values[1]).toBeNaN();
  expect(quantity(tableOf(1, measured("x", "1", [null])), two(name("x"), "^", amount(0))).values[0]).toBeNaN();
});
it("a group's mean passes over the missing, and stands at every row of the group", () => {
  expect(
    [...quantity(boards, shownIn(group("mean", name("mass"), name("species")), "kg")).values].map(
      (each) => Math.round(each * 1e7) / 1e7,
    ),
  ).toEqual([0.1762, 0.19, 0.19, 0.1762]);
});
it("a sum with a missing record is missing; a count is not", () => {
  expect([...quantity(boards, group("sum", name("mass"), name("species"))).values].map(Number.isNaN)).toEqual([
    false,
    true,
    true,
    false,
  ]);
  expect([...quantity(boards, group("count", name("mass"), name("species"))).values]).toEqual([2, 1, 1, 2]);
});
// u2(x1 - (x1+x2)/2) = u2/4 + u2/4, and the mean's own standard error: spread of 182.4 g and 170 g is 12.4 / sqrt 2, over sqrt 2 is 6.2 g
it("a value less its group's mean knows that the mean holds it too", () => {
  const column = quantity(boards, two(name("mass"), "-", group("mean", name("mass"), name("species"))));
  closeTo(column.uncertainty?.[0] ?? 0, Math.hypot(0.0005 * Math.sqrt(0.5), 0.0062), 1e-12);
  closeTo(column.uncertainty?.[1] ?? 0, 0, 1e-12, { scale: 0.0005 });
});
it("a row that is left out takes no part in the mean", () => {
  const without = { ...boards, leftOut: new Map([[3, "split"]]) };
  closeTo(quantity(without, group("mean", name("mass"), name("species"))).values[0] ?? 0, 0.1824, 1e-15);
});
it("conditions know what is not known: where keeps only what is true", () => {
  const heavy = two(name("mass"), ">", amount(175, "g"));
  expect([...conditionFromExpression(checked(heavy, boards), boards, noValues)]).toEqual([1, 1, -1, 0]);
  expect([...maskFromExpression(checked(not(heavy), boards), boards, noValues)]).toEqual([0, 0, 0, 1]);
  const cedar = two(name("species"), "=", text("cedar"));
  expect([...maskFromExpression(checked(two(heavy, "or", cedar), boards), boards, noValues)]).toEqual([1, 1, 1, 0]);
  expect([
    ...conditionFromExpression(
      checked(two(heavy, "and", two(name("species"), "=", text("spruce"))), boards),
      boards,
      noValues,
    ),
  ]).toEqual([1, 0, 0, 0]);
  expect([...maskFromExpression(checked(two(name("mass"), "=", missing), boards), boards, noValues)]).toEqual([
    0, 0, 1, 0,
  ]);
});
it("a choice takes its branch and that branch's error, though the other be missing", () => {
  const column = quantity(
    boards,
    choose(
      two(name("species"), "=", text("cedar")),
      name("thickness"),
      two(name("mass"), "*", two(amount(0, "mm"), "/", amount(1, "g"))),
    ),
  );
  expect(column.uncertainty?.[2]).toBe(0.02 * 0.001);
  const labelled = computed(
    boards,
    "size",
    choose(two(name("mass"), ">", amount(175, "g")), text("heavy"), text("light")),
  );
  expect(labelled.kind === "label" && [labelled.names, [...labelled.codes]]).toEqual([
    ["heavy", "light"],
    [0, 0, -1, 1],
  ]);
});
it("grades compare by their order, dates by the day", () => {
  const grade = {
    name: "grade",
    header: "grade",
    warnings: 0,
    origin: { from: "file", file: "t", table: "t", col: 1 },
    kind: "grade",
    levels: ["1", "2", "3"],
    codes: Int32Array.from([0, 2, -1]),
  } as const;
  const made = {
    ...grade,
    name: "made",
    kind: "date",
    days: Float64Array.from([19845, 19800, Number.NaN]),
    texts: ["2024-05-02", "2024-03-18", null],
  } as const;
  const table = tableOf(3, grade, made);
  expect([...conditionFromExpression(checked(two(name("grade"), ">=", text("2/3")), table), table, noValues)]).toEqual([
    0, 1, -1,
  ]);
  expect([
    ...conditionFromExpression(checked(two(name("made"), ">=", day("2024-05-01")), table), table, noValues),
  ]).toEqual([1, 0, -1]);
  expect(quantity(table, two(name("made"), "-", day("2024-05-01"))).values[0]).toBe(86_400);
});
it("a value of the notebook carries its uncertainty into every row, and cancels", () => {
  const values: Amounts = new Map([["loss", { value: 0.0001, unit: "mm", uncertainty: 0.00002 }]]);
  expect(quantity(boards, two(amount(1), "*", name("loss")), values).uncertainty?.[3]).toBe(0.00002);
  expect(quantity(boards, two(name("loss"), "-", name("loss")), values).uncertainty?.[3]).toBe(0);
  const twice = valueFromExpression(
    checked(two(two(amount(2), "*", name("loss")), "+", amount(0.1, "mm", 0.03)), null, values),
    values,
  );
  closeTo(twice.value ?? 0, 0.0003, 1e-12);
  closeTo(twice.uncertainty ?? 0, Math.hypot(0.00004, 0.00003), 1e-12);
  expect(twice.unit).toBe("mm");
});
it("a value that divides by zero is none", () =>
  expect(valueFromExpression(checked(two(amount(1), "/", amount(0)), null), noValues).value).toBeNull());
it("a note has its frequency, and an octave 1200 cents", () => {
  expect(valueFromExpression(checked(call("frequency_of", text("A2")), null), noValues).value).toBe(110);
  closeTo(
    valueFromExpression(checked(call("cents", amount(100, "Hz"), amount(0.2, "kHz")), null), noValues).value ?? 0,
    1200,
    1e-14,
  );
});
it("rounding goes to the nearest multiple and keeps the uncertainty", () => {
  const column = quantity(boards, call("round", name("thickness"), amount(0.1, "mm")));
  closeTo(column.values[0] ?? 0, 0.004, 1e-12);
  expect(column.uncertainty?.[0]).toBe(0.02 * 0.001);
});
it("a sum of ten thousand terms is computed without a deep call", () => {
  let long = name("thickness");
  for (let i = 1; i < 10_000; i++) long = two(long, "+", name("thickness"));
  const column = quantity(tableOf(1, measured("thickness", "mm", [2], 0.1)), long);
  closeTo(column.values[0] ?? 0, 20, 1e-10);
  closeTo(column.uncertainty?.[0] ?? 0, 1, 1e-10);
});
it("minus turns the sign", () => expect(quantity(boards, minus(name("thickness"))).values[0]).toBe(-4.02 * 0.001));
