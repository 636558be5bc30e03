// Golden pictures: tests/pictures/*.svg, compared as text, a tag a line. THUMBRULE_PICTURES=write writes them anew; look at them before you keep them.
import { readFileSync, writeFileSync } from "node:fs";
import { expect, it } from "vitest";
import type { Picture } from "../../../src/core/base/index.ts";
import { drawPicture, pictureMarkup } from "../../../src/notebook/share/draw-picture.ts";
import { document } from "./small-copy.ts";

const number = (label: string, unit: string) => ({ label, unit, kind: "number" }) as const;
const relation: Picture = {
  title: "final thickness against stiffness along",
  description: "6 points. Thickness falls.",
  x: number("stiffness along", "GPa"),
  y: number("final thickness", "mm"),
  groups: ["cedar", "spruce"],
  layers: [
    {
      kind: "band",
      group: "cedar",
      words: "95 % interval of the line of cedar",
      at: [
        { x: 6, low: 2.6, high: 2.8 },
        { x: 7.5, low: 2.5, high: 2.6 },
        { x: 9, low: 2.3, high: 2.5 },
      ],
    },
    {
      kind: "line",
      group: "cedar",
      words: "line of cedar",
      at: [
        { x: 6, y: 2.7 },
        { x: 9, y: 2.4 },
      ],
    },
    {
      kind: "line",
      group: "spruce",
      words: "line of spruce",
      dashed: true,
      at: [
        { x: 9, y: 2.9 },
        { x: 13, y: 2.5 },
      ],
    },
    {
      kind: "points",
      points: [
        {
          x: 6,
          y: 2.71,
          yLow: 2.69,
          yHigh: 2.73,
          xLow: 5.9,
          xHigh: 6.1,
          group: "cedar",
          label: "T-1: final thickness 2.71 ± 0.02 mm",
        },
        { x: 7.4, y: 2.5, group: "cedar", label: "T-2: final thickness 2.5 mm" },
        { x: 9, y: 2.38, group: "cedar", label: "T-3: final thickness 2.38 mm" },
        { x: 9.2, y: 2.88, group: "spruce", label: "T-4: final thickness 2.88 mm" },
        { x: 13, y: 2.52, group: "spruce", label: "T-5: final thickness 2.52 mm" },
        { x: 11, y: 2.6, label: "T-6: final thickness 2.6 mm" },
      ],
    },
  ],
};
const comparison: Picture = {
  title: "density across species",
  description: "5 points.",
  x: number("density", "kg/m3"),
  y: { label: "species", unit: "1", kind: "label", order: ["cedar", "cypress", "spruce"] },
  groups: ["cedar", "cypress", "spruce"],
  layers: [
    {
      kind: "points",
      points: [
        { x: 370, y: "cedar", group: "cedar", label: "T-1" },
        { x: 391, y: "cedar", group: "cedar", label: "T-2" },
        { x: 480, y: "cypress", group: "cypress", label: "T-3" },
        { x: 420, y: "spruce", group: "spruce", label: "T-4" },
        { x: 440, y: "spruce", group: "spruce", label: "T-5" },
      ],
    },
    {
      kind: "intervals",
      intervals: [
        { label: "cedar", value: 380, low: 365, high: 395 },
        { label: "spruce", value: 430, low: 415, high: 445 },
      ],
    },
  ],
};
const rig: Picture = {
  title: "Reading minus reference (g)",
  description: "4 points.",
  x: number("reference", "g"),
  y: number("reading minus reference", "g"),
  groups: [],
  layers: [
    { kind: "level", axis: "y", value: 0, words: "no error" },
    {
      kind: "points",
      points: [
        { x: 10, y: 0.03, label: "m-1" },
        { x: 50, y: -0.01, label: "m-2" },
        { x: 200, y: 0.09, label: "m-3" },
        { x: 500, y: 0.22, label: "m-4" },
      ],
    },
  ],
};
const dates: Picture = {
  title: "bias against date",
  description: "3 points.",
  x: { label: "date", unit: "1", kind: "date" },
  y: number("bias", "g"),
  groups: [],
  layers: [
    {
      kind: "points",
      points: [
        { x: 19_000, y: 0.1, label: "a" },
        { x: 19_400, y: 0.2, label: "b" },
        { x: 19_900, y: 0.15, label: "c" },
      ],
    },
  ],
};
const pictures = { relation, comparison, rig, dates };
const lines = (svg: string) => `${svg.replaceAll("><", ">\n<")}\n`;

it.each(Object.entries(pictures))("draws the picture of a %s as it was looked at", (name, picture) => {
  const file = new URL(`../../pictures/${name}.svg`, import.meta.url);
  const drawn = lines(pictureMarkup(picture, document));
  if (process.env.THUMBRULE_PICTURES === "write")
    writeFileSync(file, drawn.replace("<svg", '<svg xmlns="http://www.w3.org/2000/svg"'));
  expect(drawn.replace("<svg", '<svg xmlns="http://www.w3.org/2000/svg"')).toBe(readFileSync(file, "utf8"));
});

it("draws the same picture twice with the same bytes", () => {
  expect(pictureMarkup(relation, document)).toBe(pictureMarkup(relation, document));
});

it("gives groups different shapes and not colours alone", () => {
  const svg = pictureMarkup({ ...relation, groups: ["cedar", "spruce"] }, document);
  expect(svg).toMatch(/<circle[^>]*><title>T-2/);
  expect(svg).toMatch(/<path[^>]*><title>T-4/);
});

it("names each point by its piece, and the picture by its title and description", () => {
  const svg = drawPicture(relation, document);
  expect(svg.getAttribute("aria-label")).toBe("final thickness against stiffness along. 6 points. Thickness falls.");
  expect(Array.from(svg.querySelectorAll("title"), (title) => title.textContent)).toContain(
    "T-1: final thickness 2.71 ± 0.02 mm",
  );
});

it("has no style element, no id and no inline style, and its colours are roles", () => {
  for (const picture of Object.values(pictures)) {
    const svg = pictureMarkup(picture, document);
    expect(svg).not.toMatch(/<style| id=| style=|clip-path/);
    expect(
      [...svg.matchAll(/ (?:fill|stroke)="([^"]*)"/g)]
        .map((match) => match[1])
        .filter((color) => !/^(none|currentColor|var\(--[a-z0-9-]+\))$/.test(color ?? "")),
    ).toEqual([]);
  }
});

it("draws both lines and the band", () => {
  const svg = pictureMarkup(relation, document);
  expect(svg).toMatch(/<path aria-label="line of spruce" d="M/);
  expect(svg).toMatch(/<path aria-label="95 % interval of the line of cedar" d="M/);
});
