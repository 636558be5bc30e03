// The demo's records: the committed files are what the script makes, and they show what true-effects.ts says is true.
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { barYoungsModulus } from "../../src/core/wood/index.ts";
import { recordFiles } from "./record-files.ts";
import { SPLIT_TOP } from "./tops-file.ts";
import { trueEffects } from "./true-effects.ts";

const folder = new URL("../../notebooks/records/", import.meta.url);
const files = recordFiles();
const rowsOf = (name: string): Record<string, string>[] => {
  const [header = "", ...lines] = (files.get(name) ?? "").trim().split("\n");
  const names = header.split(",");
  return lines.map((line) => {
    const fields = [...line.matchAll(/("(?:[^"]|"")*"|[^,]*)(?:,|$)/g)].map((found) => found[1] ?? "");
    return Object.fromEntries(names.map((column, index) => [column, fields[index] ?? ""]));
  });
};

describe("the records of the demo", () => {
  for (const [name, text] of files)
    it(`${name} is what the script makes, byte for byte`, () =>
      expect(readFileSync(new URL(name, folder), "utf8")).toBe(text));
  it("has seventy boards and one line twice", () => {
    const ids = rowsOf("tops.csv").map((row) => row["Top ID"]);
    expect(new Set(ids).size).toBe(70);
    expect(ids).toHaveLength(71);
    expect(ids).toContain(SPLIT_TOP);
  });
  it("has forty instruments on the shop's tops, none on the split one", () => {
    const tops = rowsOf("instruments.csv")
      .map((row) => row["Top ID"])
      .filter((id) => id !== "");
    expect(new Set(tops).size).toBe(40);
    expect(tops).not.toContain(SPLIT_TOP);
  });
});

type Piece = {
  readonly species: string;
  readonly finished: string;
  readonly lnE: number;
  readonly lnH: number;
  readonly thickness: number;
  readonly sustain: number;
};

function pieces(): Piece[] {
  const boards = new Map(rowsOf("tops.csv").map((row) => [row["Top ID"], row]));
  return rowsOf("instruments.csv").flatMap((instrument) => {
    const board = boards.get(instrument["Top ID"] ?? "");
    if (!board) return [];
    const metres = (column: string) => Number.parseFloat(board[column] ?? "") / 1000;
    const grams = board["Mass (g)"] ?? "";
    const kilograms = grams.endsWith("kg")
      ? Number.parseFloat(grams)
      : grams.includes("O")
        ? Number.NaN
        : Number(grams) / 1000;
    const modulus = barYoungsModulus(
      kilograms,
      metres("Length (mm)"),
      metres("Width (mm)"),
      metres("Thickness (mm)"),
      Number.parseFloat(board["f long (Hz)"] ?? ""),
    );
    const thickness = Number(instrument["Final thickness (mm)"]);
    const piece = {
      species: board.Species ?? "",
      finished: instrument["Finished on"] ?? "",
      lnE: Math.log(modulus),
      lnH: Math.log(thickness),
      thickness,
      sustain: Number.parseFloat(instrument["Sustain (s)"] ?? ""),
    };
    return Number.isFinite(piece.lnE) ? [piece] : [];
  });
}

/** Slope and its standard error by plain sums, after taking each group's mean away. */
function slopeOf(all: readonly Piece[], x: keyof Piece, y: keyof Piece, group: (piece: Piece) => string) {
  const groups = [...new Set(all.map(group))].map((name) => all.filter((piece) => group(piece) === name));
  let sxx = 0;
  let sxy = 0;
  let syy = 0;
  for (const members of groups) {
    const mean = (column: keyof Piece) =>
      members.reduce((sum, piece) => sum + Number(piece[column]), 0) / members.length;
    const [mx, my] = [mean(x), mean(y)];
    for (const piece of members) {
      sxx += (Number(piece[x]) - mx) ** 2;
      sxy += (Number(piece[x]) - mx) * (Number(piece[y]) - my);
      syy += (Number(piece[y]) - my) ** 2;
    }
  }
  const slope = sxy / sxx;
  return { slope, error: Math.sqrt((syy - slope * sxy) / (all.length - groups.length - 1) / sxx) };
}

describe("what is true in the invented shop", () => {
  const all = pieces();
  const bySpecies = (piece: Piece) => piece.species;
  it("shows at this size: within a species the exponent is about -1/3", () => {
    const { slope, error } = slopeOf(all, "lnE", "lnH", bySpecies);
    expect(Math.abs(slope - trueEffects.thicknessExponent)).toBeLessThan(2 * error);
    expect(slope + 3 * error).toBeLessThan(0);
  });
  it("is hidden by the species: across all tops the slope is the other way", () => {
    const { slope, error } = slopeOf(all, "lnE", "lnH", () => "all");
    expect(slope - 2 * error).toBeGreaterThan(0);
  });
  it("holds after the rule was stated: stiffer tops end up thinner", () => {
    const { slope, error } = slopeOf(
      all.filter((piece) => piece.finished >= "2024-05-02"),
      "lnE",
      "lnH",
      bySpecies,
    );
    expect(slope + 3 * error).toBeLessThan(0);
  });
  it("fails out of sample: thicker tops rang longer until the bracing changed, and ring shorter since", () => {
    const heard = all.filter((piece) => Number.isFinite(piece.sustain));
    const before = slopeOf(
      heard.filter((piece) => piece.finished < trueEffects.bracingChanged),
      "thickness",
      "sustain",
      bySpecies,
    );
    const since = slopeOf(
      heard.filter((piece) => piece.finished >= trueEffects.bracingChanged),
      "thickness",
      "sustain",
      bySpecies,
    );
    expect(before.slope - 2 * before.error).toBeGreaterThan(0);
    expect(since.slope + 3 * since.error).toBeLessThan(0);
  });
});
