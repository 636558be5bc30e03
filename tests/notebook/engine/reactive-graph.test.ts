// What the graph promises, each promise once.
import fc from "fast-check";
import { expect, it } from "vitest";
import { reactiveGraph } from "../../../src/notebook/engine/reactive-graph.ts";

type Run = (...values: never[]) => unknown;
const graphOf = (cells: Record<string, [readonly string[], Run]>, changed: string[] = []) => {
  const graph = reactiveGraph({ schedule: setImmediate, onChange: (cell) => changed.push(cell) });
  for (const [name, [inputs, run]] of Object.entries(cells))
    graph.set(name, inputs, run as (...values: unknown[]) => unknown);
  return graph;
};

it("computes what is asked for, in any order of definition", async () => {
  const graph = graphOf({ half: [["length"], (length: number) => length / 2], length: [[], () => 650] });
  await graph.settled();
  expect(graph.value("half")).toBe(325);
});

it("stops the wave at a value that comes out the same", async () => {
  const graph = graphOf({
    length: [[], () => 650],
    rounded: [["length"], (length: number) => Math.round(length / 10) * 10],
    label: [["rounded"], (rounded: number) => `${rounded} mm`],
  });
  await graph.settled();
  graph.set("length", [], () => 651);
  await graph.settled();
  expect([graph.runs("rounded"), graph.runs("label")]).toEqual([2, 1]);
});

it("says nothing when a cell is defined again with the same value", async () => {
  const changed: string[] = [];
  const graph = graphOf(
    { a: [[], () => new Float64Array([1, Number.NaN])], b: [["a"], (a: Float64Array) => a.length] },
    changed,
  );
  await graph.settled();
  changed.length = 0;
  graph.set("a", [], () => new Float64Array([1, Number.NaN]));
  await graph.settled();
  expect(changed).toEqual([]);
  expect(graph.runs("b")).toBe(1);
});

it("waits for what takes its time", async () => {
  const graph = graphOf({
    slow: [[], () => new Promise((done) => setImmediate(() => done(3)))],
    after: [["slow"], (slow: number) => slow + 1],
  });
  await graph.settled();
  expect(graph.value("after")).toBe(4);
});

it("takes several edits before it runs as one", async () => {
  const graph = graphOf({ a: [[], () => 1], b: [["a"], (a: number) => a] });
  await graph.settled();
  for (const value of [2, 3, 4]) graph.set("a", [], () => value);
  await graph.settled();
  expect([graph.value("b"), graph.runs("b")]).toEqual([4, 2]);
});

it("never reaches the globals of the machine", async () => {
  const graph = graphOf({ reaches: [["process"], (found: unknown) => found] });
  await graph.settled();
  expect(String(graph.error("reaches"))).toContain("process is no cell");
});

it("lets a good cell answer beside a bad one, and heals", async () => {
  const graph = graphOf({
    bad: [
      [],
      () => {
        throw new Error("no");
      },
    ],
    good: [[], () => 1],
    after: [["bad"], (bad: number) => bad],
  });
  await graph.settled();
  expect([graph.value("good"), graph.value("after")]).toEqual([1, undefined]);
  graph.set("bad", [], () => 5);
  await graph.settled();
  expect(graph.value("after")).toBe(5);
});

it("forgets a cell that is removed", async () => {
  const graph = graphOf({ a: [[], () => 1] });
  await graph.settled();
  graph.remove("a");
  await graph.settled();
  expect(graph.value("a")).toBe(undefined);
});

it("comes to the same after random edits as when it is built anew", async () => {
  const edit = fc.record({ cell: fc.nat(7), from: fc.nat(7), plus: fc.integer({ min: -2, max: 2 }) });
  await fc.assert(
    fc.asyncProperty(fc.array(edit, { minLength: 1, maxLength: 20 }), async (edits) => {
      const define = (graph: ReturnType<typeof reactiveGraph>, cell: number, from: number, plus: number) =>
        from < cell
          ? graph.set(`c${cell}`, [`c${from}`], (value) => Math.abs((value as number) + plus))
          : graph.set(`c${cell}`, [], () => plus);
      const lasting = reactiveGraph({ schedule: setImmediate });
      const state = new Map<number, readonly [number, number]>();
      for (let cell = 0; cell < 8; cell++) {
        state.set(cell, [9, cell]);
        define(lasting, cell, 9, cell);
      }
      for (const { cell, from, plus } of edits) {
        state.set(cell, [from, plus]);
        define(lasting, cell, from, plus);
        await lasting.settled();
      }
      const fresh = reactiveGraph({ schedule: setImmediate });
      for (const [cell, [from, plus]] of state) define(fresh, cell, from, plus);
      await fresh.settled();
      for (const cell of state.keys()) expect(lasting.value(`c${cell}`)).toBe(fresh.value(`c${cell}`));
      lasting.dispose();
      fresh.dispose();
    }),
    { seed: 20260314, numRuns: 60 },
  );
});
