// Inches or millimetres: every quantity gives the same answer whatever units its inputs are written in.
import { fileURLToPath } from "node:url";
import fc from "fast-check";
import { describe } from "vitest";
import { fromSi, sameDimension, toSi, type Unit, unitCatalogue, unitFromText } from "../../src/core/units/index.ts";
import { methods } from "../../src/notebook/engine/index.ts";
import { closeTo } from "../support/close-to.ts";
import { law } from "../support/law.ts";
import { casesIn } from "./load-cases.ts";
import type { PhysicsCase, PhysicsValue } from "./physics-case.ts";
import { physicsAdapters, physicsCaseResult } from "./physics-case-result.ts";

const compounds =
  "kg/m3 g/cm3 lb/ft3 lb/in3 kg/m2 g/m2 oz/ft2 lb/in2 kg/m g/m lb/in oz/in m/s mm/s ft/s N/m N/mm lbf/in N/mm2 kgf/cm2 m3 cm3 in3 m2/s2".split(
    " ",
  );
const units: readonly Unit[] = [...unitCatalogue.map(({ code }) => code), ...compounds]
  .map(unitFromText)
  .filter((unit) => unit !== null);

/** The input in another unit of its dimension, or bare in coherent SI; what is no amount stays. */
function rewritten({ value, unit: written, ...rest }: PhysicsValue, pick: number, mayBeBare: boolean): PhysicsValue {
  const unit = unitFromText(written);
  const others = unit ? units.filter(({ dimension }) => sameDimension(dimension, unit.dimension)) : [];
  const bare = mayBeBare && others.length > 0 && pick % (others.length + 1) === others.length;
  const other = others[pick % (others.length + (mayBeBare ? 1 : 0) || 1)];
  const isAmount =
    typeof value === "number" || (Array.isArray(value) && value.every((each) => typeof each === "number"));
  if (!unit || (!other && !bare) || !isAmount) return { value, unit: written, ...rest };
  const moved = (each: number) => (other ? fromSi(toSi(each, unit), other) : toSi(each, unit));
  return { value: Array.isArray(value) ? value.map(moved) : moved(value as number), unit: other?.code ?? "1", ...rest };
}

/** Conversions name their units themselves; files of records have theirs in the file. */
const AS_WRITTEN = /^(unit_conversion|measurement_text_to_number)$/;
const cases = (
  casesIn(fileURLToPath(new URL("physics/checks.json", import.meta.url))) as readonly PhysicsCase[]
).filter(({ quantity, expected }) => !AS_WRITTEN.test(quantity) && !expected["outcome"]);

/** Whether a number without a unit can only mean coherent SI: each input of a case is one of a method whose record says its dimension. */
const isBarable = (quantity: string): boolean =>
  (physicsAdapters[quantity] ?? []).every(({ method, inputs, made }) => {
    const specs = methods.find(({ id }) => id === method)?.inputs ?? {};
    return !made && Object.values(inputs).every((name) => specs[name]?.dimension !== undefined);
  });

const numberOf = (value: unknown): unknown =>
  typeof value === "object" && value !== null && "value" in value ? value.value : value;

describe("units change no answer", () => {
  for (const quantity of new Set(cases.map((one) => one.quantity)))
    law(
      quantity,
      [
        fc.constantFrom(...cases.filter((one) => one.quantity === quantity)),
        fc.array(fc.nat(200), { minLength: 20, maxLength: 20 }),
      ],
      (one, picks) => {
        const before = physicsCaseResult(one, methods);
        if (!before) return;
        const inputs = Object.fromEntries(
          Object.entries(one.inputs).map(([name, input], at) => [
            name,
            rewritten(input, picks[at] ?? 0, isBarable(quantity)),
          ]),
        );
        const after = physicsCaseResult({ ...one, inputs }, methods) ?? {};
        if (after["refused"]) throw new Error(`declined: ${String(after["refused"])} ${JSON.stringify(inputs)}`);
        for (const [field, value] of Object.entries(before)) {
          const [was, is] = [numberOf(value), numberOf(after[field])];
          if (typeof was !== "number") continue;
          closeTo(is as number, was, 1e-12, was === 0 ? { scale: 1 } : {});
        }
      },
      25,
    );
});
