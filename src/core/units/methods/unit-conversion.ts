import type { Method, MethodInputs } from "../../base/index.ts";
import { declined, succeeded } from "../../base/index.ts";
import { sameDimension } from "../dimension.ts";
import { dimensionInWords } from "../dimension-in-words.ts";
import { fromSi, toSi } from "../si.ts";
import type { Unit } from "../unit.ts";
import { unitFromCode } from "../unit-from-code.ts";
import { unitFromText } from "../unit-from-text.ts";

/** A unit by its text; "1" is a plain number. */
const unitOf = (text: unknown): Unit | null =>
  text === "1" ? unitFromCode("1") : typeof text === "string" ? unitFromText(text) : null;

/** Moisture content is a ratio of masses, so that it may be said as a plain ratio where a person asks for that. */
const plainOfMoisture = (unit: Unit): Unit => (unit.code === "%MC" ? unitFromCode("%") : unit);

/**
 * The same amount in another unit: (value * factor + offset) of the one is (x * factor + offset) of the other. Factors are exact ratios. A temperature
 * has an offset unless `difference` says that a difference of two temperatures is meant: 20 °C is 68 °F, a difference of 20 °C is one of 36 °F.
 */
function run({ value, from, to, difference }: MethodInputs): ReturnType<Method["run"]> {
  const [source, target] = [unitOf(from), unitOf(to)];
  if (typeof value !== "number" || !Number.isFinite(value))
    return declined("out-of-domain", { name: "value", needed: "a number" });
  if (!source) return declined("unit-unknown", { name: "from", unit: String(from) });
  if (!target) return declined("unit-unknown", { name: "to", unit: String(to) });
  const [one, other] = sameDimension(source.dimension, target.dimension)
    ? [source, target]
    : [plainOfMoisture(source), plainOfMoisture(target)];
  if (!sameDimension(one.dimension, other.dimension))
    return declined("wrong-dimension", {
      name: `to (${target.code})`,
      found: dimensionInWords(target.dimension),
      needed: dimensionInWords(source.dimension),
    });
  const scaled = (unit: Unit): Unit => (difference === true ? { ...unit, offset: 0 } : unit);
  const si = toSi(value, scaled(one));
  const converted = one.code === other.code ? value : fromSi(si, scaled(other));
  if (!Number.isFinite(converted) || !Number.isFinite(si))
    return declined("too-large", { name: "value", most: "what a double holds" });
  if (one.dimension.temperature && sameDimension(one.dimension, { temperature: [1, 1] }) && !difference && si < 0)
    return declined("out-of-domain", { name: "value", needed: "a temperature above absolute zero" });
  return succeeded({ value: converted, unit: target.code, si });
}

/** The same amount in another unit. */
export const unitConversion: Method = {
  id: "unit-conversion",
  name: "the same amount in another unit",
  answers: "quantity",
  needs: {},
  inputs: {
    value: { kind: "number", meaning: "number, in the unit `from`" },
    from: { kind: "text", meaning: 'its unit: "in", "lb/ft3", "Mpsi"' },
    to: { kind: "text", meaning: "the unit wanted, of the same dimension" },
    difference: { kind: "yes-no", optional: true, meaning: "whether a temperature is a difference of two" },
  },
  fields: {
    value: { meaning: "number in the unit wanted" },
    unit: { meaning: "that unit, in its canonical spelling" },
    si: { meaning: "number in coherent SI" },
  },
  source: {
    citation: "NIST Special Publication 811 (2008), Appendix B; BIPM, The International System of Units, 9th edition",
    basis: "standard",
  },
  run,
};
