import { expect, it } from "vitest";
import { ringsAmong, wayRound } from "../../../src/notebook/engine/rings-among.ts";

const graph = (needs: Record<string, string[]>) => new Map(Object.entries(needs));

it("finds no ring where everything leads to something measured", () => {
  expect(ringsAmong(graph({ density: ["mass", "volume"], volume: ["length"], length: [], mass: [] }))).toEqual([]);
});

it("finds a ring of two and leaves what only leans on it", () => {
  const rings = ringsAmong(graph({ a: ["b"], b: ["a"], leans: ["a"], alone: [] }));
  expect(rings.map((ring) => [...ring].sort())).toEqual([["a", "b"]]);
});

it("finds a formula that names itself", () => expect(ringsAmong(graph({ a: ["a"] }))).toEqual([["a"]]));

it("follows a chain of 5,000 and a ring of 5,000 without running out of depth", () => {
  const long = (last: string[]) =>
    graph(Object.fromEntries(Array.from({ length: 5000 }, (_, i) => [`c${i}`, i < 4999 ? [`c${i + 1}`] : last])));
  expect(ringsAmong(long([]))).toEqual([]);
  expect(ringsAmong(long(["c0"]))[0]).toHaveLength(5000);
});

it("names the shortest way round", () => {
  const needs = graph({ a: ["b"], b: ["c", "a"], c: ["a"] });
  expect(wayRound("a", new Set(["a", "b", "c"]), needs)).toEqual(["a", "b"]);
});
