// The demo notebook under any run of edits: what is left in the engine is what a fresh engine finds.
import { readFile } from "node:fs/promises";
import fc from "fast-check";
import { expect, it } from "vitest";
import { createNotebookEngine, type NotebookEngine } from "../../../src/notebook/engine/index.ts";

const folder = new URL("../../../notebooks/", import.meta.url);
const read = (path: string) => readFile(new URL(path, folder)).catch(() => null);
const demo = new TextDecoder().decode((await read("stiffer-tops.md")) ?? new Uint8Array());

/** Edits of every kind of entry: some change a number, some break it, one takes it away, one adds another. */
const EDITS: readonly (readonly [from: string, to: string])[] = [
  ["density = mass / (length * width * thickness) ", "density = mass / (length * width * thickness) * 2 "],
  ["density = mass / (length * width * thickness) ", "density = stiffness_along / mass "],
  ["bar_stiffness(mass, length, width, thickness, f_long)", "bar_stiffness(mass, length, width, f_long)"],
  ["final_thickness ^ 3 / 12 ", "final_thickness ^ 3 / 13 "],
  ["final_thickness against stiffness_along, allowing for species\n", "final_thickness against stiffness_along\n"],
  ["final_thickness against stiffness_along, allowing for species\n", "final_thicknes against stiffness_along\n"],
  [", as a power law", ""],
  ["stated 2024-05-02", "stated 2021-05-02"],
  ["expect sustain < 2.9 s", "expect sustain < 2900 ms"],
  ["leave out piece T-23", "leave out piece T-24"],
  ["join records/instruments.csv on top_id\n", ""],
  ["from records/tops.csv", "from records/none.csv"],
  ["pieces share tree\n", ""],
  ["11 N m  from 5 N m", "12 N m  from 5 N m"],
  ["(12 * target_stiffness", "(13 * next_thickness"],
  ["## The next top", "## The next\n\n```question added\ndensity across species\n```\n"],
  ["Did the stiffer tops", "So did the stiffer tops"],
  ["\n---\nDid", "\n---\n\n\nDid"],
];

async function opened(text: string): Promise<NotebookEngine> {
  const engine = createNotebookEngine({ readFile: read, schedule: setImmediate, asOf: null, version: "test" });
  engine.update(text, "stiffer-tops.md");
  await engine.settled();
  return engine;
}

it("has an edit for every place it names", () => {
  expect(EDITS.filter(([from]) => !demo.includes(from))).toEqual([]);
});

it("comes to the same by any run of edits of the demo notebook as from scratch", async () => {
  await fc.assert(
    fc.asyncProperty(
      fc.array(
        fc.record({
          edits: fc.subarray([...EDITS], { maxLength: 4 }),
          stand: fc.integer({ min: 5, max: 20 }),
          waits: fc.boolean(),
        }),
        { minLength: 1, maxLength: 4 },
      ),
      async (waves) => {
        const lasting = await opened(demo);
        let [text, stand] = [demo, 11];
        for (const wave of waves) {
          text = wave.edits.reduce((now, [from, to]) => now.replace(from, () => to), demo);
          stand = wave.stand;
          lasting.update(text, "stiffer-tops.md");
          lasting.setDial("target_stiffness", stand);
          if (wave.waits) await lasting.settled();
        }
        await lasting.settled();
        const fresh = await opened(text);
        fresh.setDial("target_stiffness", stand);
        await fresh.settled();
        expect(JSON.stringify(lasting.result())).toBe(JSON.stringify(fresh.result()));
        lasting.dispose();
        fresh.dispose();
      },
    ),
    { seed: Number(process.env.THUMBRULE_SEED ?? 20260314), numRuns: 25 },
  );
});
