import { expect, it } from "vitest";
import { isOtherText } from "../../../../src/core/records/source/is-other-text.ts";

it.each([
  ['<?xml version="1.0"?><svg/>', "picture.svg"],
  ["\n<!DOCTYPE html><table><tr><td>id", "tops.csv"],
  ['[{"id":"B-07"}]', "tops.csv"],
  ["[".repeat(1e6), "deep.json"],
  ['{"columns":[]} {"columns":[]}', "tops.json"],
])("takes markup and JSON for no table: %#", (text, file) => expect(isOtherText(text, file)).toBe(true));

it.each([
  ["<b>id</b>,note\nB-07,dull\n", "tops.csv"],
  ["[mm],[g]\n2.4,210\n", "tops.csv"],
  ["id,thickness\nB-07,2.40\n", "NUL.json"],
  ["<0.1,2\n", "traces.csv"],
  ["[".repeat(1e6), "deep.csv"],
])("leaves delimited text alone, whatever its first mark or its name: %#", (text, file) =>
  expect(isOtherText(text, file)).toBe(false),
);
