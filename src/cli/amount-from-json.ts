// A single amount as JSON has it: a number, a written text, or {value, unit} of either; as a number in coherent SI.
import { declined, type Outcome, succeeded } from "../core/base/index.ts";
import { nearestName } from "../core/formula/index.ts";
import { measurementFromText } from "../core/records/index.ts";
import {
  type Dimension,
  dimensionInWords,
  isDimensionless,
  sameDimension,
  toSi,
  type Unit,
  unitFromCode,
  unitFromText,
} from "../core/units/index.ts";
import { kindInWords } from "./kind-in-words.ts";

/** What an amount must be: its unit in coherent SI, null where any will do; whether a temperature is a difference of two. */
export type WantedAmount = { readonly unit: Unit | null; readonly difference: boolean };
/** A number in coherent SI and what it is a number of: null where nothing says so. */
export type Amount = { readonly value: number; readonly dimension: Dimension | null };

/** Larger numbers are no measurements: their fourth power is still a number. */
const LARGEST = 1e75;
const KEYS = ["value", "unit", "uncertainty"];
const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === "object" && value !== null && !Array.isArray(value);

/** Percent of moisture is of oven-dry mass wherever moisture is asked for. */
const meant = (unit: Unit, wanted: Unit | null): Unit =>
  unit.code === "%" && wanted?.dimension.moisture ? unitFromCode("%MC") : unit;

/** A number in a unit as one in SI, if its dimension is the wanted one and it is of usable size. */
function inSi(name: string, value: number, written: Unit, { unit: wanted, difference }: WantedAmount): Outcome<Amount> {
  const unit = meant(written, wanted);
  if (wanted && !sameDimension(unit.dimension, wanted.dimension))
    return declined("wrong-dimension", {
      name,
      found: dimensionInWords(unit.dimension),
      needed: dimensionInWords(wanted.dimension),
    });
  const si = toSi(value, difference ? { ...unit, offset: 0 } : unit);
  if (Math.abs(si) > LARGEST && (wanted !== null || Number.isFinite(value)))
    return declined("too-large", { name, most: String(LARGEST) });
  return succeeded({ value: si, dimension: unit.dimension });
}

/** The unit that stands beside a number: null where none does, "1" for a plain number. */
export function unitBeside(name: string, written: unknown): Outcome<Unit | null> {
  if (written === undefined || written === null) return succeeded(null);
  if (typeof written !== "string")
    return declined("wrong-kind", { column: `the unit of ${name}`, found: kindInWords(written), needed: "a text" });
  const unit = written === "1" ? unitFromCode("1") : unitFromText(written);
  return unit ? succeeded(unit) : declined("unit-unknown", { name, unit: written.slice(0, 40) });
}

const unitLess = (name: string, text: string, wanted: Unit) =>
  declined("unit-left-out", { name, text: text.slice(0, 40), needed: dimensionInWords(wanted.dimension) });

function amountOfText(name: string, text: string, beside: Unit | null, wanted: WantedAmount): Outcome<Amount> {
  if (wanted.unit === null && /^-?Infinity$/.test(text)) return succeeded({ value: Number(text), dimension: null });
  const read = measurementFromText(text, name);
  if (!read.ok) return read;
  if (read.value.codes.some((code) => code !== "point-may-group"))
    return declined("amount-unreadable", { name, text: text.slice(0, 40) });
  const own = read.value.unit === null ? null : unitFromCode(read.value.unit);
  if (own && beside && own.code !== beside.code)
    return declined("units-differ", { name, one: own.code, other: beside.code });
  const unit = own ?? beside ?? (wanted.unit && !isDimensionless(wanted.unit.dimension) ? null : unitFromCode("1"));
  return unit ? inSi(name, read.value.value, unit, wanted) : unitLess(name, text, wanted.unit ?? unitFromCode("1"));
}

/**
 * The amount that a JSON value means. beside: the unit that a list gives to all its items. A bare number is in coherent SI; a number in {value} without
 * a unit, and a text without one, are declined where a unit is needed. Declines an unknown unit, a wrong dimension, a number of no usable size, by name.
 */
export function amountFromJson(
  name: string,
  value: unknown,
  wanted: WantedAmount,
  beside: Unit | null = null,
): Outcome<Amount> {
  if (typeof value === "number") {
    if (beside) return inSi(name, value, beside, wanted);
    const isUsable = Math.abs(value) <= LARGEST || (wanted.unit === null && !Number.isFinite(value));
    return isUsable
      ? succeeded({ value, dimension: wanted.unit?.dimension ?? null })
      : declined("too-large", { name, most: String(LARGEST) });
  }
  if (typeof value === "string") return amountOfText(name, value, beside, wanted);
  if (!isRecord(value)) return declined("wrong-kind", { column: name, found: kindInWords(value), needed: "a number" });
  const odd = Object.keys(value).find((key) => !KEYS.includes(key));
  if (odd !== undefined)
    return declined("input-unknown", {
      name: `${odd} in ${name}`.slice(0, 80),
      nearest: nearestName(odd, KEYS) ?? "",
      known: "value and unit",
    });
  const unit = unitBeside(name, value["unit"]);
  if (!unit.ok) return unit;
  const inner = value["value"];
  if (typeof inner === "string") return amountOfText(name, inner, unit.value ?? beside, wanted);
  if (typeof inner !== "number")
    return declined("wrong-kind", {
      column: `the value of ${name}`,
      found: kindInWords(inner),
      needed: "a number or its text",
    });
  const given = unit.value ?? beside;
  if (given) return inSi(name, inner, given, wanted);
  return wanted.unit && !isDimensionless(wanted.unit.dimension)
    ? unitLess(name, String(inner), wanted.unit)
    : inSi(name, inner, unitFromCode("1"), wanted);
}
