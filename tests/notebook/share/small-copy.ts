// A small copy for tests: three records, one answer, one picture, prose. `text` stands in every place that a maker's text can reach.
import { createHash } from "node:crypto";
import { parseHTML } from "linkedom";
import type { Picture, RowRef } from "../../../src/core/base/index.ts";
import type { NotebookResult } from "../../../src/notebook/engine/entry-result.ts";
import { notebookOutline } from "../../../src/notebook/language/index.ts";
import type { CopyLooks } from "../../../src/notebook/share/copy-html.ts";
import { pictureDrawing } from "../../../src/notebook/share/draw-picture.ts";
import type { EmbeddedCopy } from "../../../src/notebook/share/embedded-copy.ts";
import { htmlText } from "../../../src/notebook/share/html-text.ts";
import { markupOfDrawing } from "../../../src/notebook/share/markup-of-drawing.ts";
import { statedResult } from "../../../src/notebook/share/stated-result.ts";

export const digest = async (bytes: Uint8Array): Promise<string> => createHash("sha256").update(bytes).digest("hex");
export const document = parseHTML("<html><body></body></html>").document as unknown as Document;

/** The same script whatever a copy needs. */
export const oneReader = (script: string) => ({ still: script, turning: script, drawing: script });

export const looks: CopyLooks = {
  renderView: (view, drawing) =>
    `<p>${htmlText(view.kind === "answer" ? view.finding.sentence : view.kind)}</p>${drawing ? markupOfDrawing(drawing) : ""}`,
  renderProse: (markdown) => `<p>${htmlText(markdown)}</p>`,
  drawPicture: (picture) => pictureDrawing(picture, document),
  readerScripts: oneReader('document.querySelector("h1");'),
  readerStyle: ".dated-copy{margin:auto}",
};

const row = (n: number, piece: string): RowRef => ({ table: "tops", row: n, piece });

export function picture(text: string): Picture {
  return {
    title: `thickness ${text}`,
    description: `3 points. ${text}`,
    x: { label: `stiffness ${text}`, unit: "GPa", kind: "number" },
    y: { label: "thickness (mm)", unit: "mm", kind: "number" },
    groups: [`cedar ${text}`, "spruce"],
    layers: [
      {
        kind: "points",
        points: [
          { x: 8, y: 2.71, group: `cedar ${text}`, label: `T-1 ${text}: 2.71 mm`, row: row(1, "T-1") },
          { x: 9, y: 2.38, group: `cedar ${text}`, label: "T-2: 2.38 mm", row: row(2, "T-2") },
          { x: 11, y: 2.2, group: "spruce", label: "T-3: 2.2 mm", row: row(3, "T-3") },
        ],
      },
    ],
  };
}

export function smallResult(text = ""): NotebookResult {
  const used = [row(1, `T-1 ${text}`), row(2, "T-2"), row(3, "T-3")];
  const finding = {
    kind: "relation",
    sentence: `Thickness falls with stiffness. ${text}`,
    estimate: [
      {
        name: `slope ${text}`,
        value: -0.17,
        low: -0.3,
        high: -0.04,
        level: 0.95,
        unit: "mm/GPa",
        standardError: 0.02,
        degreesOfFreedom: 1,
      },
    ],
    rows: { used, setAside: [] },
    checks: [],
    cautions: [],
    method: {
      id: "ols",
      name: "Least squares",
      source: { citation: "Gauss (1809)", basis: "memory" },
      chosenBecause: text,
    },
    picture: picture(text),
    trace: { steps: [{ what: "method", says: text }] },
  } as const;
  return {
    notebook: "small.md",
    title: `Small ${text}`,
    asOf: null,
    version: "0.1.0",
    parts: [
      { is: "prose", text: `Some prose. ${text}` },
      { is: "entry", name: `question-1 ${text}` },
    ],
    entries: [
      {
        name: `question-1 ${text}`,
        kind: "question",
        line: 3,
        asked: `thickness against stiffness ${text}`,
        finding,
        problems: [],
        view: { kind: "answer", finding },
      },
    ],
    problems: [],
  };
}

const smallText = (text: string) => `Some prose. ${text}\n`;

export function smallCopy(text = ""): EmbeddedCopy {
  const { frontMatter: _frontMatter, ...outline } = notebookOutline(smallText(text), "small.md");
  const cell = (n: number, raw: string) => [n, raw, `${raw} mm`] as const;
  return {
    format: "thumbrule-dated-copy",
    formatVersion: 1,
    date: "2026-03-14",
    version: "0.1.0",
    notebookText: smallText(text),
    outline,
    dials: [{ name: "target", value: 9 }],
    withheld: 0,
    tables: [
      {
        name: "tops",
        rows: [row(1, `T-1 ${text}`), row(2, "T-2"), row(3, "T-3")],
        leftOut: [{ index: 2, why: `split ${text}` }],
        shared: null,
        finished: null,
        notes: [text],
        columns: [
          {
            kind: "quantity",
            name: "thickness",
            header: `Thickness ${text}`,
            origin: { from: "file", file: "records/tops.csv", table: "tops", col: 2 },
            warnings: 0,
            values: [2.71e-3, 2.38e-3, null],
            uncertainty: null,
            unit: "mm",
            dimension: { length: [1, 1] },
          },
          {
            kind: "label",
            name: "species",
            header: "Species",
            origin: { from: "file", file: "records/tops.csv", table: "tops", col: 3 },
            warnings: 0,
            codes: [0, 0, -1],
            names: [`cedar ${text}`],
          },
        ],
        cells: [
          {
            column: "thickness",
            file: "records/tops.csv",
            table: "tops",
            col: 2,
            cells: [cell(1, `2.71 ${text}`), cell(2, "2.38"), null],
          },
        ],
      },
    ],
    result: statedResult(smallResult(text)),
  };
}
