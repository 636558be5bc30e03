// Units and written numbers. The unit that an answer is wanted in is the one that the case expects.
import type { PhysicsCase } from "../physics-case.ts";
import type { PhysicsAdapters } from "./physics-adapter.ts";

const wanted = ({ expected }: PhysicsCase): string | undefined => expected["x"]?.unit;

export const writtenAdapters: PhysicsAdapters = {
  unit_conversion: [
    {
      method: "unit-conversion",
      inputs: { difference: "difference" },
      fields: { x: "value" },
      made: (one) => ({
        value: one.inputs["x"]?.value,
        from: one.inputs["x"]?.unit,
        to: wanted(one) ?? one.inputs["to"]?.value ?? one.inputs["to"]?.unit,
      }),
    },
  ],
  measurement_text_to_number: [
    {
      method: "measurement-in-text",
      inputs: { text: "text", unit: "unit" },
      fields: { x: "value" },
      made: (one) => ({ to: wanted(one) }),
    },
  ],
};
