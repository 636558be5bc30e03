// A small invented shop for the engine's tests: fourteen tops of two woods, finished over three years.
import { createNotebookEngine, type NotebookEngine } from "../../../src/notebook/engine/index.ts";

const tops = Array.from({ length: 14 }, (_, i) => {
  const cedar = i % 2 === 0;
  const stiff = (cedar ? 8 : 11) + (i % 5) * 0.4;
  const thick = (cedar ? 2.3 : 2.6) - (i % 5) * 0.05 + (i % 3) * 0.01;
  return [
    `T-${i + 1}`,
    cedar ? "cedar" : "spruce",
    stiff.toFixed(2),
    thick.toFixed(3),
    (0.2 + i / 100).toFixed(3),
    `202${2 + (i % 4)}-0${1 + (i % 9)}-1${i % 10}`,
  ].join(",");
});

/** Bytes of a table by its path. */
export const shopFiles: Readonly<Record<string, string>> = {
  "records/tops.csv": ["top_id,species,stiffness (GPa),thickness (mm),mass (kg),finished on", ...tops].join("\n"),
  "records/rig.csv": [
    "rig,date,reference (g),reading (g)",
    ...[50, 100, 200, 50, 100, 200, 50, 100, 200].map(
      (mass, i) => `balance,2024-0${1 + (i % 3)}-02,${mass},${(mass + 0.2 + (i % 4) * 0.05).toFixed(2)}`,
    ),
  ].join("\n"),
};

export const shopNotebook = `---
title: A small shop
records: [tops]
---
Prose first.

\`\`\`records tops
from records/tops.csv
piece is top_id
finished on finished_on
leave out piece T-3 because "split while drying"
\`\`\`

\`\`\`columns tops
half_thickness = thickness / 2   in mm
double_stiffness = stiffness * 2   in GPa
ratio = double_stiffness / half_thickness
\`\`\`

\`\`\`dial limit
2.5 mm  from 1 mm to 4 mm
\`\`\`

\`\`\`value twice
limit * 2   in mm
\`\`\`

\`\`\`question slope
thickness against stiffness, allowing for species
\`\`\`

\`\`\`question computed
half_thickness against double_stiffness
\`\`\`

\`\`\`rule stiffer-thinner
when stiffness rises, thickness falls
within species
stated 2023-06-01
\`\`\`

\`\`\`rig balance
reading against reference in records/rig.csv
\`\`\`

\`\`\`picture
thickness against stiffness, by species
\`\`\`
`;

/** A reader of invented files. */
export const readerOf =
  (files: Readonly<Record<string, string>>) =>
  async (path: string): Promise<Uint8Array | null> =>
    Object.hasOwn(files, path) ? new TextEncoder().encode(files[path]) : null;

/** An engine over invented files, with the notebook computed. */
export async function shopEngine(
  text = shopNotebook,
  files: Readonly<Record<string, string>> = shopFiles,
): Promise<NotebookEngine> {
  const engine = createNotebookEngine({
    readFile: readerOf(files),
    schedule: setImmediate,
    asOf: null,
    version: "test",
  });
  engine.update(text, "shop.md");
  await engine.settled();
  return engine;
}
