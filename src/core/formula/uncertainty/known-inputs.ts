import { declined, type Outcome, succeeded } from "../../base/index.ts";
import { HALF_WIDTHS, type InputLaw, lawStandardUncertainty, mean, standardDeviation } from "../../numerics/index.ts";
import { toSi, type Unit, unitFromText } from "../../units/index.ts";

/** What is known of one input of a model: SI where it has a unit. */
export type KnownInput = {
  readonly name: string;
  readonly law: InputLaw;
  /** Standard uncertainty; that of a t law with two degrees of freedom or fewer is infinite. */
  readonly uncertainty: number;
  /** Infinity where the uncertainty is taken as known without doubt. */
  readonly degreesOfFreedom: number;
  readonly readings: Float64Array | null;
};

type Entry = Readonly<Record<string, unknown>>;
export const isEntry = (value: unknown): value is Entry =>
  typeof value === "object" && value !== null && !Array.isArray(value);
const numberOf = (entry: Entry, ...names: readonly string[]): number | null => {
  for (const name of names) {
    const value = entry[name];
    if (typeof value === "number" && Number.isFinite(value)) return value;
  }
  return null;
};
const lacking = (name: string, needed: string) => declined("out-of-domain", { name, needed });

/** A difference of two amounts in SI: the offset of a scale of temperature drops out. */
const spanInSi = (span: number, unit: Unit | null): number => (unit ? toSi(span, unit) - toSi(0, unit) : span);

function fromReadings(name: string, list: readonly unknown[], unit: Unit | null): Outcome<KnownInput> {
  const given = list.filter((one): one is number => typeof one === "number" && !Number.isNaN(one));
  if (given.length < 2) return declined("too-few-records", { have: given.length, need: 2 });
  if (!given.every(Number.isFinite)) return declined("not-finite", { name });
  const readings = Float64Array.from(given, (one) => (unit ? toSi(one, unit) : one));
  const uncertainty = standardDeviation(readings) / Math.sqrt(readings.length);
  const law: InputLaw = { law: "normal", mean: mean(readings), sd: uncertainty };
  return succeeded({ name, law, uncertainty, degreesOfFreedom: readings.length - 1, readings });
}

/** The half width that an entry states: itself, its ends, or the standard uncertainty times the law's factor. */
function halfWidthOf(entry: Entry, law: keyof typeof HALF_WIDTHS, unit: Unit | null): number | null {
  const [low, high] = [numberOf(entry, "low"), numberOf(entry, "high")];
  if (low !== null && high !== null) return spanInSi((high - low) / 2, unit);
  const half = numberOf(entry, "half_width");
  if (half !== null) return spanInSi(half, unit);
  const standard = numberOf(entry, "u", "uncertainty", "sd");
  return standard === null ? null : spanInSi(standard, unit) * HALF_WIDTHS[law];
}

function lawOf(entry: Entry, name: string, estimate: number, unit: Unit | null): Outcome<InputLaw> {
  const law = entry.law ?? "normal";
  const relative = numberOf(entry, "u_relative");
  const standard = numberOf(entry, "u", "uncertainty", "sd");
  const sd = standard !== null ? spanInSi(standard, unit) : relative !== null ? relative * Math.abs(estimate) : null;
  const df = numberOf(entry, "df");
  if (law === "rectangular" || law === "triangular" || law === "u-shaped") {
    const halfWidth = halfWidthOf(entry, law, unit) ?? (sd === null ? null : sd * HALF_WIDTHS[law]);
    return halfWidth === null
      ? lacking(`uncertainty of ${name}`, "u, half_width, or low and high")
      : succeeded({ law, mean: estimate, halfWidth });
  }
  if (law === "t") {
    if (df === null || !(df > 0)) return lacking(`df of ${name}`, "degrees of freedom above zero for the t law");
    const scale = numberOf(entry, "scale");
    if (scale !== null) return succeeded({ law, mean: estimate, scale: spanInSi(scale, unit), degreesOfFreedom: df });
    if (sd === null || df <= 2) return lacking(`scale of ${name}`, "scale, or u with more than two degrees of freedom");
    return succeeded({ law, mean: estimate, scale: sd / Math.sqrt(df / (df - 2)), degreesOfFreedom: df });
  }
  if (law !== "normal") return lacking(`law of ${name}`, "one of normal, rectangular, triangular, t, u-shaped");
  return sd === null
    ? lacking(`uncertainty of ${name}`, "u (standard, in the unit of the value), u_relative, or readings")
    : succeeded({ law, mean: estimate, sd });
}

function knownInput(entry: Entry): Outcome<KnownInput> {
  const name = String(entry.name ?? "");
  const unitText = entry.unit;
  const unit = unitText === undefined || unitText === null ? null : unitFromText(String(unitText));
  if (unit === null && unitText !== undefined && unitText !== null)
    return lacking(`unit "${String(unitText)}" of ${name}`, "a unit that is known");
  if (Array.isArray(entry.readings)) return fromReadings(name, entry.readings, unit);
  const [low, high] = [numberOf(entry, "low"), numberOf(entry, "high")];
  const stated = numberOf(entry, "value", "mean") ?? (low !== null && high !== null ? (low + high) / 2 : null);
  if (stated === null) return lacking(`value of ${name}`, "a number, or readings");
  for (const one of ["u", "uncertainty", "sd", "u_relative", "half_width", "scale"])
    if ((numberOf(entry, one) ?? 0) < 0) return declined("negative-uncertainty", { name });
  const law = lawOf(entry, name, unit ? toSi(stated, unit) : stated, unit);
  if (!law.ok) return law;
  const df = numberOf(entry, "df");
  if (df !== null && !(df > 0)) return lacking(`df of ${name}`, "degrees of freedom above zero");
  const uncertainty = lawStandardUncertainty(law.value);
  if (!(uncertainty >= 0)) return declined("negative-uncertainty", { name });
  return succeeded({
    name,
    law: law.value,
    uncertainty,
    degreesOfFreedom: df ?? Number.POSITIVE_INFINITY,
    readings: null,
  });
}

/**
 * The inputs that a model names, in the model's order, out of a list of records {name, value, u, ...} or a record of them by name; which is lacking or not usable, by name.
 * Inputs that the model does not name are refused too: a slip in a name must not pass in silence.
 */
export function knownInputs(given: unknown, names: readonly string[]): Outcome<readonly KnownInput[]> {
  const list = isEntry(given)
    ? Object.entries(given).map(([name, one]) => (isEntry(one) ? { name, ...one } : { name, value: one }))
    : given;
  if (!Array.isArray(list)) return lacking("inputs", "a list of {name, value, u}");
  const known = new Map<string, KnownInput>();
  for (const entry of list as readonly unknown[]) {
    if (!isEntry(entry) || typeof entry.name !== "string") return lacking("inputs", "a list of {name, value, u}");
    if (!names.includes(entry.name)) return lacking(entry.name, `a name of the model: ${names.join(", ")}`);
    if (known.has(entry.name)) return lacking(entry.name, "one entry and not two");
    const one = knownInput(entry);
    if (!one.ok) return one;
    known.set(one.value.name, one.value);
  }
  const missing = names.find((name) => !known.has(name));
  if (missing !== undefined) return lacking(missing, "an entry with its value and uncertainty");
  return succeeded(names.flatMap((name) => known.get(name) ?? []));
}
