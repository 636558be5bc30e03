// A written measurement as a method: what a bench book says, as a number with a unit.
import { type Caution, declined, type Method, type MethodInputs, succeeded } from "../base/index.ts";
import {
  dimensionInWords,
  fromSi,
  sameDimension,
  toSi,
  type Unit,
  unitFromCode,
  unitFromText,
} from "../units/index.ts";
import { type Measurement, measurementFromText } from "./readers/measurement-from-text.ts";

/** Units whose dimensions the columns of a shop's records have; "12 oz/in" is none of these unless it is asked for. */
const COLUMNS = [
  "m",
  "m2",
  "m3",
  "kg",
  "kg/m3",
  "kg/m2",
  "N",
  "Pa",
  "N.m",
  "N.m2",
  "N/m",
  "Hz",
  "s",
  "m/s",
  "K",
  "deg",
];
const RATIOS = ["1", "%MC", "{cent}", "dB"];
const columnDimensions = () => [...COLUMNS, ...RATIOS].map((code) => unitFromCode(code).dimension);

type Read = { readonly measurement: Measurement; readonly unit: Unit; readonly si: number; readonly target: Unit };

/** A unit given as an option: null where none is given, undefined where it is not known. */
const unitOption = (text: unknown): Unit | null | undefined =>
  text === undefined
    ? null
    : text === "1"
      ? unitFromCode("1")
      : ((typeof text === "string" ? unitFromText(text) : null) ?? undefined);

function readText({ text, unit, to, decimal }: MethodInputs) {
  if (typeof text !== "string") return declined("wrong-kind", { column: "text", found: "no text", needed: "a text" });
  const [column, wanted] = [unitOption(unit), unitOption(to)];
  if (column === undefined) return declined("unit-unknown", { name: "unit", unit: String(unit) });
  if (wanted === undefined) return declined("unit-unknown", { name: "to", unit: String(to) });
  const mark = decimal === "comma" ? "," : decimal === "point" ? "." : undefined;
  const read = measurementFromText(text, "text", mark);
  if (!read.ok) return read;
  const own = read.value.unit === null ? column : unitFromCode(read.value.unit);
  if (!own) return declined("unit-left-out", { name: "text", text, needed: "mm, in, g, oz, kg/m3 or the like" });
  const name = `text "${text.trim()}"`;
  const fits = wanted ?? column;
  if (
    fits
      ? !sameDimension(own.dimension, fits.dimension)
      : !columnDimensions().some((one) => sameDimension(one, own.dimension))
  )
    return declined("wrong-dimension", {
      name,
      found: dimensionInWords(own.dimension),
      needed: fits ? dimensionInWords(fits.dimension) : "a length, a mass, a density or another quantity of a column",
    });
  const si = toSi(read.value.value, own);
  if (!Number.isFinite(si)) return declined("too-large", { name, most: "what a double holds" });
  return succeeded<Read>({ measurement: read.value, unit: own, si, target: wanted ?? own });
}

function run(inputs: MethodInputs): ReturnType<Method["run"]> {
  const read = readText(inputs);
  if (!read.ok) return read;
  const { measurement, unit, si, target } = read.value;
  const value = unit.code === target.code ? measurement.value : fromSi(si, target);
  const uncertainty =
    measurement.uncertainty === undefined ? null : (measurement.uncertainty * unit.factor) / target.factor;
  return succeeded({ value, unit: target.code, si, uncertainty, codes: measurement.codes });
}

function cautions(inputs: MethodInputs): readonly Caution[] {
  const read = readText(inputs);
  if (!read.ok) return [];
  const text = String(inputs["text"]).trim();
  return read.value.measurement.codes.map((code) =>
    code === "point-may-group"
      ? {
          code,
          facts: {
            text,
            taken: String(read.value.measurement.value),
            other: String(read.value.measurement.value * 1000),
          },
        }
      : { code: "marked-amount", facts: { text, mark: code } },
  );
}

/** A written measurement as a number with its unit: `19 11/16 in`, `7½ in`, `1' 9 5/8"`, `6 lb 3 oz`, `3,4 mm`, `1.6e6 psi`. */
export const measurementInText: Method = {
  id: "measurement-in-text",
  name: "number and unit of a written measurement",
  answers: "quantity",
  needs: {},
  inputs: {
    text: { kind: "text", meaning: 'what is written: "19 11/16 in", "3,4 mm", "6 lb 3 oz"' },
    unit: { kind: "text", optional: true, meaning: "unit of the column that it stands in, for a text without one" },
    to: { kind: "text", optional: true, meaning: "unit to give the number in; its own unless given" },
    decimal: {
      kind: "choice",
      choices: ["point", "comma"],
      optional: true,
      meaning: "which mark is the decimal one, where a mark before three digits leaves it open",
    },
  },
  fields: {
    value: { meaning: "the number, in `unit`" },
    unit: { meaning: "its unit, in its canonical spelling" },
    si: { meaning: "the number in coherent SI" },
    uncertainty: { meaning: "what stands after ±, in `unit`; absent where nothing does" },
    codes: { meaning: "what to know of the reading: range, approximate, below-limit and so on" },
  },
  source: {
    citation: "the rules by which a cell is read; NIST Special Publication 811 (2008), Appendix B, for the units",
    basis: "standard",
  },
  run,
  cautions,
};

export const recordMethods: readonly Method[] = [measurementInText];
