import { expect, it } from "vitest";
import { delimiterVote } from "../../../../src/core/records/source/delimiter-vote.ts";

it.each([
  ["a;b\n1,5;2,5\n", ";"],
  ["a,b\n1,2\n", ","],
  ["a\tb\n1,2\t3\n", "\t"],
  ["| a | b |\n|---|---|\n| 1 | 2 |\n", "|"],
  ["# a,b,c,d\na;b\n1;2\n", ";"],
  ["mass\n1.5\n", null],
])("parts %j", (text, delimiter) => expect(delimiterVote(text)).toBe(delimiter));
