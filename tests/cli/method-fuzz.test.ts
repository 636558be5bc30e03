// Whatever stands in a line, a method answers with numbers or declines with a code: it never fails, never gives NaN or Infinity, always ends.
import fc from "fast-check";
import { describe, expect } from "vitest";
import { methodAnswer } from "../../src/cli/method-answer.ts";
import type { InputSpec } from "../../src/core/base/index.ts";
import { methods } from "../../src/notebook/engine/index.ts";
import { law } from "../support/law.ts";

const sizes = fc.oneof(
  fc.constantFrom(0, -0, 1, -1, 2, 0.5, 12, 1e-300, 5e-324, 1e-9, 1e9, 1e74, 1e75, 1e150, 1e308, -1e308, 2 ** 53),
  fc.integer({ min: -20, max: 200 }),
  fc.double({ noNaN: true, noDefaultInfinity: true }),
);
const units = fc.constantFrom(
  "mm",
  "in",
  "g",
  "GPa",
  "Mpsi",
  "%",
  "%MC",
  "Hz",
  "degC",
  "1",
  "",
  "furlong",
  "kg/m3",
  "s",
);
const texts = fc.oneof(
  fc.constantFrom(
    "",
    "a",
    "b",
    "--5",
    "7 1/2 in",
    "3/0",
    "1,250",
    "Infinity",
    "E2",
    "y ~ x",
    "two-sided",
    "1' 2\"",
    "__proto__",
  ),
  fc.string({ maxLength: 12 }),
);
const single = fc.oneof(
  { weight: 4, arbitrary: sizes },
  texts,
  fc.boolean(),
  fc.constant(null),
  fc.record({ value: fc.oneof(sizes, texts), unit: units }),
);
/** Values from so few that ties, constants and one group come up. */
const few = fc.oneof(fc.constantFrom(1, 2, 3), fc.constantFrom("a", "b"), fc.constant(null));
const list = (each: fc.Arbitrary<unknown>) => fc.array(each, { maxLength: 12 });
const wild: fc.Arbitrary<unknown> = fc.oneof(
  single,
  list(single),
  list(few),
  list(fc.integer({ min: 0, max: 6 })),
  list(list(sizes)),
  fc.array(fc.array(fc.integer({ min: 0, max: 9 }), { minLength: 2, maxLength: 2 }), { minLength: 2, maxLength: 3 }),
  fc.record({ value: list(sizes), unit: units }),
  list(fc.dictionary(fc.constantFrom("x", "y", "a", "group"), single, { maxKeys: 3 })),
  fc.dictionary(fc.constantFrom("x", "y", "a", "group", "value", "unit"), fc.oneof(single, list(single)), {
    maxKeys: 3,
  }),
  fc.object({ maxDepth: 2, maxKeys: 3 }),
);

const numbers = (length: number) =>
  fc.oneof(
    fc.array(fc.double({ min: 0.1, max: 10, noNaN: true }), { minLength: length, maxLength: length }),
    fc.array(fc.integer({ min: 0, max: 3 }), { minLength: length, maxLength: length }),
    fc.array(sizes, { minLength: length, maxLength: length }),
    fc.array(fc.oneof(fc.integer({ min: 1, max: 5 }), fc.constant(null)), { minLength: length, maxLength: length }),
  );
/** A value of the kind that the record asks for, so that most runs reach the method. */
function kindly(spec: InputSpec, length: number): fc.Arbitrary<unknown> {
  const words = fc.array(fc.constantFrom("a", "b", "c", null), { minLength: length, maxLength: length });
  const ofKind: { readonly [K in InputSpec["kind"]]: fc.Arbitrary<unknown> } = {
    quantity: fc.oneof(fc.double({ min: 1e-3, max: 10, noNaN: true }), sizes),
    number: fc.oneof(fc.double({ min: 0.01, max: 0.99, noNaN: true }), fc.integer({ min: 1, max: 30 }), sizes),
    quantities: numbers(length),
    table: fc.oneof(fc.array(numbers(length), { minLength: 1, maxLength: 4 }), wild),
    label: texts,
    labels: words,
    grades: fc.oneof(numbers(length), words),
    text: texts,
    choice: fc.constantFrom(...(spec.choices ?? ["a"])),
    "yes-no": fc.boolean(),
  };
  return ofKind[spec.kind];
}

type Inputs = Readonly<Record<string, unknown>>;
function inputsOf(specs: Readonly<Record<string, InputSpec>>): fc.Arbitrary<Inputs> {
  return fc
    .integer({ min: 0, max: 9 })
    .chain((length) =>
      fc.record(
        Object.fromEntries(
          Object.entries(specs).map(([name, spec]) => [
            name,
            fc.oneof({ weight: 12, arbitrary: kindly(spec, length) }, { weight: 1, arbitrary: wild }),
          ]),
        ),
        { requiredKeys: Object.keys(specs).filter((name) => !specs[name]?.optional) },
      ),
    );
}
const astray: fc.Arbitrary<Inputs> = fc.dictionary(
  fc.oneof(fc.constantFrom("x", "y", "mass", "constructor", "toString"), fc.string({ maxLength: 8 })),
  wild,
  { maxKeys: 4 },
);

/** The line's answer as JSON: JSON says null for NaN, so the law looks before. */
const areFinite = (value: unknown): boolean =>
  typeof value === "number"
    ? Number.isFinite(value)
    : typeof value !== "object" || value === null || Object.values(value).every(areFinite);
const isEmpty = (value: unknown): boolean =>
  value === null || (typeof value === "object" && Object.values(value).every(isEmpty));

describe("any line is answered", () => {
  for (const method of methods)
    law(
      `${method.id} answers or declines`,
      [fc.oneof({ weight: 9, arbitrary: inputsOf(method.inputs) }, { weight: 1, arbitrary: astray })],
      (inputs) => {
        const line = JSON.stringify({ id: 1, method: method.id, inputs });
        const answer = methodAnswer(line, 1, [method]);
        if ("refused" in answer) {
          expect(answer.refused.code).not.toBe("defect");
          expect(answer.refused.sentence).not.toMatch(/undefined|NaN|\[object/);
          return;
        }
        expect(areFinite(answer.result)).toBe(true);
        expect(isEmpty(answer.result), "a result without any value").toBe(false);
        for (const { sentence } of answer.cautions ?? []) expect(sentence).not.toMatch(/undefined|NaN|\[object/);
      },
      120,
    );
});
