import { readdirSync, readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { notebookFromText } from "../../../src/notebook/language/index.ts";

const folder = new URL("../../../notebooks/", import.meta.url);
it.each(readdirSync(folder).filter((name) => name.endsWith(".md")))("reads every entry of %s without a problem", (name) => {
  const notebook = notebookFromText(readFileSync(new URL(name, folder), "utf8"), name);
  expect([...notebook.problems, ...notebook.entries.flatMap(({ problems }) => problems)]).toEqual([]);
});
