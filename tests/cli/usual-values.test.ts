import { expect, it } from "vitest";
import { runCommand } from "../../src/cli/run-command.ts";
import { smallSurface } from "./small-surface.ts";

const notebook = "```records tops\nfrom tops.csv\n```\n";
const tops = "Piece,Species,Length (mm),Thickness (mm)\nT-13,spruce,550,3.9\nT-14,spruce,550,397\n";
const notesOf = async (files: Readonly<Record<string, string>>) => {
  const surface = smallSurface({ "n.md": notebook, "tops.csv": tops, ...files });
  const { entries } = JSON.parse((await runCommand(["report", "n.md", "--json"], surface)).stdout) as {
    entries: { table?: { notes: string[] } }[];
  };
  return entries[0]?.table?.notes;
};

it("points out in a report what lies far from what is usual", async () =>
  expect(await notesOf({})).toEqual(["Thickness of T-14 is 397 mm; usual is 1.5 to 12 mm. Is the unit right?"]));
it("goes by the maker's own range where there is one", async () => {
  const about = { columns: { Thickness: { usual: { low: 300, high: 500 } } } };
  expect(await notesOf({ "tops.about.json": JSON.stringify(about) })).toEqual([
    "Thickness of T-13 is 3.9 mm; usual is 300 to 500 mm. Is the unit right?",
  ]);
});
