import { escape as closure, desc, op, table } from "arquero";
import { expect, it } from "vitest";
import { closureFunction } from "../../../src/core/columns/closure-function.ts";

it("a body of arithmetic computes what it says", () =>
  expect(closureFunction("a", "b", "const c = a * b; if (c > 5) return c; return [a, b]")(2, 3)).toBe(6));
it.each([
  "return a.constructor",
  "return a['__proto__']",
  "return (() => 0).constructor('return 1')()",
  "return process",
  "return a => this",
])("refuses %s", (body) => expect(() => closureFunction("a", body)({})).toThrow());
it("code made from text is forbidden here, so what follows is computed by closures", () => {
  const forbidden = Reflect.get(globalThis, "Func" + "tion") as (body: string) => unknown;
  expect(() => forbidden("return 1")).toThrow();
});
it("arquero groups, sums, sorts and joins without code made from text", () => {
  const tops = table({ species: ["cedar", "spruce", "cedar"], mass: [1, 2, 4] });
  const sums = tops
    .groupby("species")
    .rollup({ sum: op.sum("mass"), n: op.count() })
    .orderby(desc("sum"))
    .objects();
  expect(sums).toEqual([
    { species: "cedar", sum: 5, n: 2 },
    { species: "spruce", sum: 2, n: 1 },
  ]);
  expect(tops.derive({ twice: "d => d.mass * 2 + op.abs(-1)" }).array("twice")).toEqual([3, 5, 9]);
  expect(tops.filter(closure((d: { mass: number }) => d.mass > 1)).numRows()).toBe(2);
  expect(tops.join_left(table({ species: ["cedar"], from: ["yard"] }), "species").array("from")).toEqual([
    "yard",
    "yard",
    undefined,
  ]);
});
