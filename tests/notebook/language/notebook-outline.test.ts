import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { notebookFromOutline, notebookFromText, notebookOutline } from "../../../src/notebook/language/index.ts";

const demo = (name: string) => readFileSync(new URL(`../../../notebooks/${name}`, import.meta.url), "utf8");

it.each(["first-day.md", "stiffer-tops.md", "rig.md", "species.md", "README.md"])(
  "gives the notebook %s back from its text and an outline that went through JSON",
  (name) => {
    for (const text of [demo(name), demo(name).replaceAll("\n", "\r\n"), demo(name).slice(0, -40)]) {
      const { frontMatter, ...outline } = notebookOutline(text, name);
      const read = notebookFromOutline(text, name, JSON.parse(JSON.stringify(outline)));
      expect({ ...read, frontMatter }).toEqual(notebookFromText(text, name));
    }
  },
);
