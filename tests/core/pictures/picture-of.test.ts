import { expect, it } from "vitest";
import type { Answer, Picture, PictureLayer } from "../../../src/core/base/index.ts";
import type { ColumnTable, DateColumn, LabelColumn, QuantityColumn } from "../../../src/core/columns/index.ts";
import { pictureOf } from "../../../src/core/pictures/picture-of.ts";
import { picturePoints } from "../../../src/core/pictures/picture-points.ts";
import { closeTo } from "../../support/close-to.ts";

const quantity = (name: string, values: readonly number[], unit: string, factor: number): QuantityColumn => ({
  kind: "quantity",
  name,
  header: name,
  origin: { from: "file", file: "t.csv", table: "t", col: 1 },
  warnings: 0,
  values: Float64Array.from(values, (value) => value * factor),
  uncertainty: null,
  unit,
  dimension: {},
});
// x 1 2 3 4 GPa; y = 5 − x / 2 with errors that cancel, in mm.
const stiffness = quantity("stiffness_along", [1, 2, 3, 4, Number.NaN], "GPa", 1e9);
const thickness = {
  ...quantity("final_thickness", [4.6, 3.9, 3.4, 3.1, 2], "mm", 1e-3),
  uncertainty: Float64Array.from([2e-5, 2e-5, 2e-5, 2e-5, 2e-5]),
};
const species: LabelColumn = {
  kind: "label",
  name: "species",
  header: "Species",
  origin: { from: "file", file: "t.csv", table: "t", col: 3 },
  warnings: 0,
  codes: Int32Array.from([0, 0, 1, 1, -1]),
  names: ["cedar", "spruce"],
};
const finished: DateColumn = {
  kind: "date",
  name: "finished",
  header: "Finished",
  origin: { from: "file", file: "t.csv", table: "t", col: 4 },
  warnings: 0,
  days: Float64Array.from([100, 200, 300, Number.NaN, 500]),
  texts: [],
};
const rows = [1, 2, 3, 4, 5].map((row) => ({ table: "tops", row, piece: `T-${row}` }));
const table: ColumnTable = {
  name: "tops",
  rowCount: 5,
  columns: new Map(),
  rows,
  leftOut: new Map(),
  cellAt: () => null,
  notes: [],
};
const used = rows.slice(0, 4);
const answer = (kind: Answer["kind"], estimate: Answer["estimate"], verdict?: "kept"): Answer =>
  ({
    kind,
    sentence: "Thickness falls with stiffness.",
    estimate,
    rows: { used, setAside: [{ row: rows[4] ?? (rows[0] as never), why: "missing-value" }] },
    checks: [],
    cautions: [
      {
        code: "one-piece-carries-it",
        facts: { piece: "T-1", without: "the slope is nil" },
        sentence: "T-1 carries much of this answer: without it, the slope is nil.",
      },
    ],
    method: { id: "ols", name: "Least squares", source: { citation: "x", basis: "memory" }, chosenBecause: "x" },
    trace: { steps: [] },
    ...(verdict ? { verdict } : {}),
  }) as Answer;
const slope = {
  name: "slope of final thickness on stiffness along",
  value: -0.5,
  low: -0.7,
  high: -0.3,
  level: 0.95,
  unit: "mm/GPa",
  standardError: 0.05,
  degreesOfFreedom: 2,
};
const layer = <K extends PictureLayer["kind"]>(picture: Picture | undefined, kind: K) =>
  picture?.layers.find((one): one is Extract<PictureLayer, { kind: K }> => one.kind === kind);

it("draws the line of the finding's own slope through the middle of the points, in the units shown", () => {
  const line = layer(pictureOf(answer("relation", [slope]), { table, y: thickness, x: stiffness }), "line");
  const [first, last] = [line?.at[0], line?.at.at(-1)];
  // Middle: x 2.5 GPa, y 3.75 mm; slope −0.5 mm/GPa.
  closeTo(first?.x ?? 0, 1, 1e-12);
  closeTo(first?.y ?? 0, 4.5, 1e-12);
  closeTo(last?.y ?? 0, 3, 1e-12);
});

it("is as wide at the middle as t s / root n, and wider at the ends", () => {
  const band = layer(pictureOf(answer("relation", [slope]), { table, y: thickness, x: stiffness }), "band")?.at ?? [];
  const width = (at: number) => (band[at]?.high ?? 0) - (band[at]?.low ?? 0);
  // Residuals 0.1, −0.1, −0.1, 0.1: s² = 0.04 / 2; t = 0.2 / 0.05 = 4; half-width 4 sqrt(0.02 / 4).
  closeTo(width(12), 2 * 4 * Math.sqrt(0.02 / 4), 1e-9);
  expect(width(0)).toBeGreaterThan(width(12));
});

it("draws a line for each group, and names each point's group", () => {
  const picture = pictureOf(answer("relation", [slope]), { table, y: thickness, x: stiffness, group: species });
  expect(picture?.groups).toEqual(["cedar", "spruce"]);
  expect(picture?.layers.filter((one) => one.kind === "line").map((one) => one.group)).toEqual(["cedar", "spruce"]);
});

it("bends the line of a power law and keeps it above zero", () => {
  const line = layer(
    pictureOf(
      answer("relation", [{ ...slope, name: "exponent of final thickness on stiffness along", value: -1, unit: "1" }]),
      { table, y: thickness, x: stiffness, powerLaw: true },
    ),
    "line",
  );
  const [first, last] = [line?.at[0], line?.at.at(-1)];
  closeTo((first?.y ?? 0) / (last?.y ?? 1), 4, 1e-9);
});

it("labels a point with its piece and its values with units", () => {
  const points =
    layer(pictureOf(answer("relation", [slope]), { table, y: thickness, x: stiffness, group: species }), "points")
      ?.points ?? [];
  expect(points).toHaveLength(4);
  expect(points[0]?.label).toBe("T-1: final thickness 4.60 ± 0.02 mm, stiffness along 1 GPa (cedar)");
  closeTo(points[0]?.yHigh ?? 0, 4.62, 1e-9);
});

it("describes what, how many, the answer and the exceptions", () => {
  expect(
    pictureOf(answer("relation", [slope]), { table, y: thickness, x: stiffness, group: species })?.description,
  ).toBe(
    "4 points. cedar 2, spruce 2. final thickness (mm) runs from 3.1 to 4.6, stiffness along (GPa) runs from 1 to 4. Thickness falls with stiffness. T-1 carries much of this answer: without it, the slope is nil. 1 record set aside.",
  );
});

it("marks instruments of a rule by before and after it was stated", () => {
  const picture = pictureOf(answer("verdict", [], "kept"), {
    table,
    y: thickness,
    x: stiffness,
    stated: { days: 200, finished: finished.days },
  });
  expect(layer(picture, "points")?.points.map((point) => point.group)).toEqual([
    "finished before it was stated",
    "finished since",
    "finished since",
    "date not known",
  ]);
});

it("draws a comparison with groups down and each group's interval", () => {
  const mean = (group: string, value: number) => ({
    ...slope,
    name: `mean of final thickness, ${group}`,
    value,
    low: value - 0.1,
    high: value + 0.1,
    unit: "mm",
  });
  const picture = pictureOf(
    answer("comparison", [
      mean("cedar", 4.25),
      mean("spruce", 3.25),
      { ...slope, name: "difference of cedar less spruce", unit: "mm" },
    ]),
    { table, y: thickness, group: species },
  );
  expect(picture?.y.kind).toBe("label");
  expect(layer(picture, "intervals")?.intervals.map(({ label, value }) => [label, value])).toEqual([
    ["cedar", 4.25],
    ["spruce", 3.25],
  ]);
});

it("draws a rig's errors against the reference, with the level of no error and twice the repeatability either way", () => {
  const [reading, reference] = [
    quantity("reading", [10.1, 50.2, 100.1], "g", 1e-3),
    quantity("reference", [10, 50, 100], "g", 1e-3),
  ];
  const picture = pictureOf(
    {
      ...answer("rig", [
        { ...slope, name: "bias of balance", value: 0.13, unit: "g" },
        { ...slope, name: "repeatability", value: 0.05, unit: "g" },
      ]),
      rows: { used: rows.slice(0, 3), setAside: [] },
    },
    { table, y: reading, x: reference },
  );
  expect(picture?.layers.flatMap((one) => (one.kind === "level" ? [Number(one.value.toFixed(9))] : []))).toEqual([
    0, 0.03, 0.23,
  ]);
  closeTo(Number(layer(picture, "points")?.points[0]?.y), 0.1, 1e-9);
});

it("draws nothing where the columns leave nothing to draw", () => {
  expect(pictureOf(answer("relation", [slope]), { table, y: thickness })).toBeUndefined();
  expect(pictureOf(answer("ranking", []), { table, y: thickness })).toBeUndefined();
});

it("draws a picture entry from rows that are not left out and have both values", () => {
  const picture = picturePoints({
    table: { ...table, leftOut: new Map([[1, "split while drying"]]) },
    y: thickness,
    x: stiffness,
    by: species,
    mask: null,
  });
  expect(layer(picture, "points")?.points.map((point) => point.row?.piece)).toEqual(["T-1", "T-3", "T-4"]);
  expect(picture.title).toBe("final thickness against stiffness along");
});

it("draws a prediction with levels at the expected value and the ends of its interval", () => {
  const picture = pictureOf(
    answer("prediction", [{ ...slope, name: "final thickness to expect", value: 3, low: 2.5, high: 3.5, unit: "mm" }]),
    { table, y: thickness, x: stiffness },
  );
  expect(picture?.layers.flatMap((one) => (one.kind === "level" ? [one.value] : []))).toEqual([3, 2.5, 3.5]);
});

it("draws words of notes as intervals and never as points on an axis", () => {
  const notes = {
    ...species,
    kind: "words",
    name: "tonal_notes",
    texts: ["bright and long", null, "warm", "bright", null],
  } as const;
  const picture = pictureOf(
    answer("words", [{ ...slope, name: "bright in cedar", value: 0.5, low: 0.1, high: 0.9, unit: "1" }]),
    { table, y: notes, group: species },
  );
  expect(picture?.layers.map((one) => one.kind)).toEqual(["intervals"]);
  expect(JSON.stringify(picture)).not.toContain("bright and long");
});

it("thins the points of a very large table evenly, and says so, but rests its line on all", () => {
  const many = Array.from({ length: 10_000 }, (_, i) => i);
  const big = {
    ...table,
    rowCount: many.length,
    rows: many.map((row) => ({ table: "tops", row: row + 1, piece: `T-${row}` })),
  };
  const [x, y] = [
    quantity("x", many, "mm", 1e-3),
    quantity(
      "y",
      many.map((value) => 2 * value),
      "mm",
      1e-3,
    ),
  ];
  const picture = picturePoints({ table: big, y, x, by: null, mask: null });
  expect(layer(picture, "points")?.points.length).toBe(2000);
  expect(picture.description).toMatch(/^10000 points, of which an even part is drawn\. y \(mm\) runs from 0 to 19998/);
});
