import { expect, it } from "vitest";
import { resolvedPath } from "../../../src/notebook/engine/resolved-path.ts";

it.each([
  ["stiffer-tops.md", "records/tops.csv", "records/tops.csv"],
  ["shop/stiffer-tops.md", "records/tops.csv", "shop/records/tops.csv"],
  ["shop/a.md", "../records/tops.csv", "records/tops.csv"],
  ["a.md", "../outside.csv", "../outside.csv"],
  ["a.md", "./records//tops.csv", "records/tops.csv"],
])("in %s, %s is %s", (notebook, file, path) => expect(resolvedPath(notebook, file)).toBe(path));
