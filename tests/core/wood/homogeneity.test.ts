// A formula of physics does not know our units: measure everything in other ones and the result changes by its own dimension, no more.
import fc from "fast-check";
import type { Dimension } from "../../../src/core/units/index.ts";
import { unitFromText } from "../../../src/core/units/index.ts";
import { woodMethods } from "../../../src/core/wood/index.ts";
import { closeTo } from "../../support/close-to.ts";
import { law } from "../../support/law.ts";

/** These hold a constant with a dimension (1000 kg/m3, 273.15 K), so they only hold in SI. */
const SI_ONLY = new Set([
  "specific-gravity",
  "density-at-moisture",
  "density-from-basic-gravity",
  "equilibrium-moisture",
  "air-sound-speed",
  "three-point-stiffness-by-mass",
]);

/** Plates by eigenvalues: rounding is magnified for absurd outlines, and for moduli where two modes mix. */
const MAGNIFIED = 1e-6;

type Scales = { readonly mass: number; readonly length: number; readonly time: number };
const scaleOf = (dimension: Dimension, scales: Scales) =>
  (["mass", "length", "time"] as const).reduce((product, base) => {
    const [n, d] = dimension[base] ?? [0, 1];
    return product * scales[base] ** (n / d);
  }, 1);

const dimensionOf = ({ dimension }: { readonly dimension?: string }): Dimension =>
  (dimension === undefined ? null : unitFromText(dimension))?.dimension ?? {};

const scale = fc.double({ min: 0.1, max: 10, noNaN: true });
/** On a grid, so that no difference of two nearly equal arguments is left to rounding. */
const uniform = fc.array(
  fc.integer({ min: 1, max: 19 }).map((twentieths) => twentieths / 20),
  { minLength: 10, maxLength: 10 },
);

for (const method of woodMethods.filter((one) => !SI_ONLY.has(one.id)))
  law(
    `${method.id} means the same in any units`,
    [uniform, scale, scale, scale],
    (values, mass, length, time) => {
      const scales = { mass, length, time };
      const plain: Record<string, number> = {};
      const scaled: Record<string, number> = {};
      Object.entries(method.inputs).forEach(([name, spec], index) => {
        if (spec.kind === "choice" || (spec.optional && /^shear(Along|Across)$/.test(name))) return;
        const value = spec.whole
          ? (spec.atLeast ?? 1) + Math.floor(3 * (values[index % values.length] ?? 0))
          : name === "intersection"
            ? 0.25
            : (values[index] ?? 0.5);
        plain[name] = value;
        scaled[name] = value * scaleOf(dimensionOf(spec), scales);
      });
      const before = method.run(plain);
      const after = method.run(scaled);
      if (!before.ok || !after.ok) return;
      for (const [field, spec] of Object.entries(method.fields)) {
        if (typeof before.value[field] !== "number" || /step/i.test(field)) continue;
        const factor = scaleOf(dimensionOf(spec), scales);
        const expected = (before.value[field] as number) * factor;
        closeTo(after.value[field] as number, expected, method.id.startsWith("plate-") ? MAGNIFIED : 1e-9, {
          scale: Math.max(Math.abs(expected), factor / 1000),
        });
      }
    },
    60,
  );
