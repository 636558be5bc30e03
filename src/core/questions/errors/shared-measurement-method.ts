// What shared measurements do to rules, as the catalogue takes it.
import { type Caution, declined, type Method, type MethodInputs, type Outcome, succeeded } from "../../base/index.ts";
import { generatorFromSeed } from "../../numerics/index.ts";
import { type SharedMeasurement, sharedMeasurementNull } from "./shared-measurement-null.ts";
import { simulatedSharedNull } from "./simulated-shared-null.ts";
import { nullFields, nullSource, spreadInput, spreadInputs } from "./spread-inputs.ts";

const WORLDS = 4000;

/** `E computed from h`: what a column was computed from, in the words of its maker. */
const ancestorIn = (text: unknown): string | null =>
  typeof text === "string"
    ? (/\b(?:computed|calculated|derived|made)\s+(?:from|with|out of)\s+(.+)$/i.exec(text)?.[1]?.trim() ?? null)
    : null;

/** The columns that share a measurement, by their texts: one names the other, or both the same ancestor. */
function sharedByName({
  x,
  y,
}: MethodInputs): { readonly y: string; readonly x: string; readonly shared: string } | null {
  if (typeof x !== "string" || typeof y !== "string") return null;
  const named = (ancestor: string | null, other: string) =>
    ancestor?.split(/\s*(?:,|\band\b)\s*/).find((one) => one === other || one === ancestorIn(other)) ?? null;
  const shared = named(ancestorIn(y), x) ?? named(ancestorIn(x), y);
  return shared === null ? null : { y, x, shared };
}

const numberOr = (value: unknown, otherwise: number): number => (typeof value === "number" ? value : otherwise);

/** Interval and p by simulation, where the number of records is given. */
function simulated(between: SharedMeasurement, inputs: MethodInputs): Outcome<Readonly<Record<string, unknown>>> {
  if (inputs.n === undefined) return succeeded({});
  const [n, seed] = [inputs.n, numberOr(inputs.seed, 1)];
  if (typeof n !== "number" || !Number.isInteger(n) || n < 3 || n > 100_000)
    return declined("out-of-domain", { name: "n", needed: "a whole number of records, 3 to 100000" });
  const found = typeof inputs.found === "number" ? inputs.found : null;
  const worlds = Math.max(200, Math.min(WORLDS, Math.floor(4_000_000 / n)));
  const generator = generatorFromSeed(seed).split("shared-measurement-null");
  const { correlationLow, correlationHigh, slopeLow, slopeHigh, p } = simulatedSharedNull(
    between,
    n,
    worlds,
    found,
    generator,
  );
  return succeeded({ correlationLow, correlationHigh, slopeLow, slopeHigh, p, worlds, seed });
}

/** Slope and correlation of y on x that come of both having been computed from one measurement. */
export const sharedMeasurementMethod: Method = {
  id: "shared-measurement-null",
  name: "What a shared measurement alone does to a slope",
  answers: "relation",
  needs: {},
  inputs: {
    xSpread: { ...spreadInput("true spread of ln x, such as 5 %"), optional: true },
    ySpread: { ...spreadInput("true spread of ln y"), optional: true },
    error: { ...spreadInput("spread of the error of what both were computed from"), optional: true },
    xExponent: {
      kind: "number",
      optional: true,
      meaning: "power with which the shared measurement enters x, 1 if not given",
    },
    yExponent: {
      kind: "number",
      optional: true,
      meaning: "power with which it enters y, -3 if not given (E from the thickness)",
    },
    n: { kind: "number", optional: true, meaning: "records, for what that many would show" },
    found: { kind: "number", optional: true, meaning: "slope of ln y on ln x that was found, for its p" },
    seed: { kind: "number", optional: true, meaning: "seed of the simulation, 1" },
    x: { kind: "text", optional: true, meaning: "name of the one column, instead of spreads" },
    y: { kind: "text", optional: true, meaning: "name of the other, as in E computed from h" },
  },
  fields: {
    ...nullFields,
    correlationLow: { meaning: "95 % of worlds without a law: lowest correlation of that many records" },
    correlationHigh: { meaning: "highest" },
    slopeLow: { meaning: "the same of the slope of ln y on ln x, lowest" },
    slopeHigh: { meaning: "highest" },
    p: { meaning: "share of worlds without a law with a slope as far out as the one found" },
    worlds: { meaning: "worlds drawn" },
    seed: { meaning: "seed of the simulation" },
    shares: { meaning: "whether the names say that one measurement entered both" },
    shared: { meaning: "what both columns were computed from" },
  },
  source: nullSource,
  run: (inputs) => {
    const byName = sharedByName(inputs);
    const isNumeric = ["xSpread", "ySpread", "error"].some((name) => inputs[name] !== undefined);
    if (!isNumeric && typeof inputs.x === "string" && typeof inputs.y === "string")
      return succeeded({ shares: byName !== null, shared: byName?.shared ?? null });
    const spreads = spreadInputs(inputs, ["xSpread", "ySpread", "error"]);
    if (!spreads.ok) return spreads;
    const { xSpread = 0, ySpread = 0, error = 0 } = spreads.value;
    const between: SharedMeasurement = {
      shared: error,
      xExponent: numberOr(inputs.xExponent, 1),
      yExponent: numberOr(inputs.yExponent, -3),
      xOwn: xSpread,
      yOwn: ySpread,
    };
    const made = sharedMeasurementNull(between);
    if (!Object.values(made).every(Number.isFinite))
      return declined("out-of-domain", { name: "spreads", needed: "some spread in x and in y" });
    const drawn = simulated(between, inputs);
    return drawn.ok ? succeeded({ ...made, ...drawn.value }) : drawn;
  },
  cautions: (inputs, result): readonly Caution[] => {
    const byName = sharedByName(inputs);
    const facts = byName ?? { y: "y", x: "x", shared: "the measurement" };
    return byName || (typeof result.correlation === "number" && result.correlation !== 0)
      ? [{ code: "computed-from-the-other", facts }]
      : [];
  },
};
