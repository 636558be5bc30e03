// A small computed notebook made by hand, for tests of what shows it: one entry of each kind of view.
import type { Picture, RowRef, View } from "../../src/core/base/index.ts";
import type { EntryResult, NotebookResult } from "../../src/notebook/engine/index.ts";

const rows: readonly RowRef[] = ["B-01", "B-02", "B-03", "B-04", "B-05", "B-06"].map((piece, i) => ({
  table: "tops",
  row: i + 1,
  piece,
}));
const stiffness = [9.1, 10.4, 11.2, 12.9, 13.4, 14.8];
const thickness = [2.71, 2.66, 2.55, 2.41, 2.38, 2.31];

export const samplePicture: Picture = {
  title: "Final thickness against stiffness along the grain",
  description: "6 tops; the thickness falls by 0.07 mm for each GPa (0.05 to 0.09), within each species.",
  x: { label: "stiffness along", unit: "GPa", kind: "number" },
  y: { label: "final thickness", unit: "mm", kind: "number" },
  groups: ["cedar", "spruce"],
  layers: [
    {
      kind: "points",
      points: rows.map((row, i) => ({
        x: stiffness[i] ?? 0,
        y: thickness[i] ?? 0,
        group: i % 2 ? "spruce" : "cedar",
        label: `${row.piece}: ${thickness[i]} mm at ${stiffness[i]} GPa`,
        row,
      })),
    },
    {
      kind: "band",
      words: "interval of the line",
      group: "cedar",
      at: [
        { x: 9, low: 2.66, high: 2.78 },
        { x: 15, low: 2.22, high: 2.36 },
      ],
    },
    {
      kind: "line",
      words: "common slope",
      group: "cedar",
      at: [
        { x: 9, y: 2.72 },
        { x: 15, y: 2.29 },
      ],
    },
  ],
};

const trace = {
  steps: [
    { what: "column", says: "final_thickness is read from records/instruments.csv", column: "final_thickness" },
    {
      what: "formula",
      says: "stiffness_along is computed by a formula",
      formula: "bar_stiffness(mass, length, width, thickness, f_long)",
    },
    {
      what: "cells",
      says: "6 raw cells of final_thickness",
      cells: rows.map((row, i) => ({
        file: "records/instruments.csv",
        table: "instruments",
        row: row.row,
        col: 4,
        column: "Final thickness (mm)",
        raw: String(thickness[i]).replace(".", ","),
        reading: `${thickness[i]} mm`,
      })),
    },
  ],
};

const method = {
  id: "ols-common-slope",
  name: "Least squares with a common slope",
  source: { citation: "Weisberg, Applied Linear Regression, 4th edition, chapter 5", basis: "published" as const },
  chosenBecause: "One quantity against another, with a label to allow for.",
};
const parts = {
  estimate: [
    {
      name: "slope of final thickness on stiffness along",
      value: -0.0712,
      low: -0.091,
      high: -0.0514,
      level: 0.95,
      unit: "mm/GPa",
      standardError: 0.0083,
      degreesOfFreedom: 3,
    },
  ],
  rows: { used: rows.slice(0, 5), setAside: rows.slice(5).map((row) => ({ row, why: "final_thickness is missing" })) },
  checks: [
    {
      id: "influence",
      name: "Influence",
      value: 0.4,
      limit: 1,
      passed: true,
      sentence: "No single top carries the answer.",
    },
  ],
  cautions: [
    {
      code: "few-records" as const,
      facts: { have: 5, need: 10 },
      sentence: "This rests on 5 records; with fewer than 10 an answer can turn with the next instrument.",
    },
  ],
  method,
  trace,
};

const entry = (name: string, kind: string, line: number, asked: string, view: View): EntryResult => ({
  name,
  kind,
  line,
  asked,
  view,
  problems: view.kind === "problem" ? view.problems : [],
  ...(view.kind === "answer" ? { finding: view.finding } : {}),
});

export const sampleResult: NotebookResult = {
  notebook: "tops.md",
  title: "Do stiffer tops end up thinner?",
  asOf: null,
  version: "0.0.0",
  problems: [],
  parts: [
    { is: "prose", text: "Every top is planed until it feels right.\n" },
    ...[
      "tops",
      "joint_loss",
      "target",
      "question-1",
      "stiffer-thinner",
      "light-is-loud",
      "too-soon",
      "word-1",
      "typo",
    ].map((name) => ({ is: "entry" as const, name })),
  ],
  entries: [
    entry("tops", "records", 8, "from records/tops.csv\njoin records/instruments.csv on top_id\npiece is top_id", {
      kind: "table",
      caption: "tops",
      rowCount: 6,
      notes: ["1 record of instruments has no top."],
      columns: [
        { name: "species", header: "Species", kind: "label", unit: "", warnings: 0 },
        {
          name: "final_thickness",
          header: "Final thickness",
          kind: "quantity",
          unit: "mm",
          uncertainty: "give or take 0.02 mm",
          warnings: 1,
        },
      ],
      rows: rows.map((row, i) => ({
        piece: row.piece,
        row: row.row,
        ...(i === 5 ? { setAside: "split while drying" } : {}),
        cells: [
          { raw: i % 2 ? "Spruce" : "cedar", reading: i % 2 ? "spruce" : "cedar" },
          {
            raw: String(thickness[i]).replace(".", ","),
            reading: `${thickness[i]} mm`,
            ...(i === 2 ? { warning: "decimal comma" } : {}),
          },
        ],
      })),
    }),
    entry("joint_loss", "value", 14, "0.1 mm + 2 * blade_wear", {
      kind: "amount",
      name: "joint_loss",
      formula: "0.1 mm + 2 * blade_wear",
      amount: "0.35 ± 0.02 mm",
      value: 0.35,
      unit: "mm",
      trace: { steps: [] },
    }),
    entry("target", "dial", 18, "9 N m from 5 N m to 15 N m", {
      kind: "slider",
      name: "target",
      value: 9,
      from: 5,
      to: 15,
      step: 0.1,
      unit: "N.m",
    }),
    entry("question-1", "question", 22, "final_thickness against stiffness_along, allowing for species", {
      kind: "answer",
      finding: {
        kind: "relation",
        sentence:
          "Stiffer tops end up thinner: 0.071 mm less for each GPa more (0.051 to 0.091), among tops of one species.",
        picture: samplePicture,
        ...parts,
      },
    }),
    entry(
      "stiffer-thinner",
      "rule",
      26,
      "when stiffness_along rises, final_thickness falls\nwithin species\nstated 2024-05-02",
      {
        kind: "answer",
        finding: {
          kind: "verdict",
          verdict: "kept",
          sentence: "Stiffer tops did end up thinner, in 5 of 5 instruments finished after 2 May 2024.",
          ...parts,
        },
      },
    ),
    entry("light-is-loud", "rule", 31, "when density falls, loudness rises", {
      kind: "answer",
      finding: {
        kind: "verdict",
        verdict: "broken",
        sentence: "Lighter tops were not louder after the rule was stated.",
        ...parts,
        cautions: [],
      },
    }),
    entry("too-soon", "rule", 35, "when tap_pitch rises, sustain rises", {
      kind: "answer",
      finding: {
        kind: "verdict",
        verdict: "cannot-tell",
        sentence: "It would take about 14 more instruments to tell.",
        ...parts,
        cautions: [],
      },
    }),
    entry("word-1", "question", 39, "loudness across species", {
      kind: "answer",
      finding: {
        kind: "refused",
        code: "one-group",
        facts: { column: "species", group: "cedar" },
        sentence: "All records have the same species (cedar); at least two are needed to compare.",
      },
    }),
    entry("typo", "question", 43, "final_thicknes against density", {
      kind: "problem",
      problems: [
        {
          line: 44,
          column: 1,
          length: 14,
          code: "unknown-column",
          sentence: "There is no column final_thicknes in tops. Check the spelling against the column heads.",
          suggestion: "final_thickness",
        },
      ],
    }),
  ],
};
