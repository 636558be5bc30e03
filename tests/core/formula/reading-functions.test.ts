// Repeated readings of one thing, in columns of a row and in rows of a piece.
import { expect, it } from "vitest";
import type { Amounts } from "../../../src/core/formula/index.ts";
import { closeTo } from "../../support/close-to.ts";
import {
  amount,
  call,
  group,
  labels,
  measured,
  name,
  problemsOf,
  quantity,
  tableOf,
  two,
  withFormula,
} from "./formula-of.ts";

const boards = tableOf(
  4,
  measured("h1", "mm", [2.3, 2.3, 2.3, null], 0.03),
  measured("h2", "mm", [2.4, null, 2.3, null], 0.03),
  measured("h3", "mm", [2.5, null, 2.3, null], 0.03),
  measured("mass", "g", [150, 160, 170, 180]),
  labels("board", ["B-1", "B-1", "B-1", "B-2"]),
);
const h = ["h1", "h2", "h3"].map(name);
const u = 0.03e-3 / Math.sqrt(3);
const s = 0.1e-3 / Math.sqrt(3);

// JCGM 100:2008, 4.2.3: s / sqrt n; 5.1.2: independent parts in squares. By hand: sd of 2.3 2.4 2.5 is 0.1
it("mean(…) has the standard error of the spread and its readings' own uncertainty", () => {
  const { values, uncertainty, unit } = quantity(boards, call("mean", ...h));
  closeTo(values[0] ?? 0, 2.4e-3, 1e-14);
  closeTo(uncertainty?.[0] ?? 0, Math.hypot(s, u), 1e-12);
  expect(unit).toBe("mm");
});
it("a missing reading is passed over; one alone has only its own uncertainty; none is missing", () => {
  const { values, uncertainty } = quantity(boards, call("mean", ...h));
  closeTo(values[1] ?? 0, 2.3e-3, 1e-14);
  closeTo(uncertainty?.[1] ?? 0, 0.03e-3, 1e-12);
  expect([values[3], uncertainty?.[3]]).toEqual([Number.NaN, Number.NaN]);
});
it("two arguments pass over the missing too", () => {
  const { values } = quantity(boards, call("mean", ...h.slice(0, 2)));
  closeTo(values[1] ?? 0, 2.3e-3, 1e-14);
});
it("readings without an uncertainty leave that of their spread", () => {
  const bare = tableOf(1, measured("a", "mm", [1]), measured("b", "mm", [3]));
  closeTo(quantity(bare, call("mean", name("a"), name("b"))).uncertainty?.[0] ?? 0, 1e-3, 1e-12);
});
it("equal readings have no spread, only their own", () =>
  closeTo(quantity(boards, call("mean", ...h)).uncertainty?.[2] ?? 0, u, 1e-12));
it("a mean less itself is certain, also through another column", () => {
  const chained = withFormula(boards, "h", call("mean", ...h));
  closeTo(quantity(chained, two(name("h"), "-", call("mean", ...h))).uncertainty?.[0] ?? 9, 0, 1e-12, { scale: u });
});
// h1 - (h1 + h2 + h3) / 3: own parts 2/3, 1/3, 1/3, and the spread
it("a reading less the mean counts its own error once", () => {
  const chained = withFormula(boards, "h", call("mean", ...h));
  const own = (0.03e-3 * Math.sqrt(6)) / 3;
  closeTo(quantity(chained, two(name("h1"), "-", name("h"))).uncertainty?.[0] ?? 0, Math.hypot(own, s), 1e-12);
});
it("a later formula carries it on: its square has twice the relative uncertainty", () => {
  const { values, uncertainty } = quantity(boards, two(call("mean", ...h), "^", amount(2)));
  closeTo((uncertainty?.[0] ?? 0) / (values[0] ?? 1), (2 * Math.hypot(s, u)) / 2.4e-3, 1e-12);
});
it("sd(…) is the spread itself, missing for one reading", () => {
  const { values } = quantity(boards, call("sd", ...h));
  closeTo(values[0] ?? 0, 0.1e-3, 1e-12);
  expect([values[1], values[2]]).toEqual([Number.NaN, 0]);
});
it("readings of unlike kinds have no mean", () =>
  expect(problemsOf(call("mean", name("h1"), name("mass")), boards)[0]?.code).toBe("wrong-dimension"));
it("amounts alone have a mean as well", () => {
  const values: Amounts = new Map();
  closeTo(
    quantity(tableOf(1), call("mean", amount(1, "mm"), amount(3, "mm")), values).uncertainty?.[0] ?? 0,
    1e-3,
    1e-12,
  );
});

// Rows of B-1: 150, 160, 170 g: sd 10, / sqrt 3; JCGM 100:2008, 4.2.3
it("mean of X by piece stands at each row with the standard error of the spread", () => {
  const { values, uncertainty } = quantity(boards, group("mean", name("mass"), name("board")));
  expect([...values]).toEqual([0.16, 0.16, 0.16, 0.18]);
  for (const row of [0, 1, 2]) closeTo(uncertainty?.[row] ?? 0, 0.01 / Math.sqrt(3), 1e-12);
  expect(uncertainty?.[3]).toBe(0);
});
it("its readings' own uncertainty joins in squares", () => {
  const rows = tableOf(2, measured("h", "mm", [2, 4], 0.1), labels("board", ["a", "a"]));
  closeTo(
    quantity(rows, group("mean", name("h"), name("board"))).uncertainty?.[1] ?? 0,
    Math.hypot(1e-3, 0.1e-3 / Math.sqrt(2)),
    1e-12,
  );
});
it("the mean of a piece less the same mean is certain, and so it is through another column", () => {
  const chained = withFormula(boards, "m", group("mean", name("mass"), name("board")));
  const { uncertainty } = quantity(chained, two(name("m"), "-", group("mean", name("mass"), name("board"))));
  closeTo(uncertainty?.[0] ?? 9, 0, 1e-12, { scale: 0.01 });
});
it("the spreads of two means are two errors", () => {
  const both = two(group("mean", name("mass"), name("board")), "-", group("mean", name("mass")));
  // B-1: sd 10 g / sqrt 3; all four: 150 160 170 180, squares 500 / 3 / 4
  closeTo(quantity(boards, both).uncertainty?.[0] ?? 0, Math.sqrt(1e-4 / 3 + 500e-6 / 12), 1e-12);
});
