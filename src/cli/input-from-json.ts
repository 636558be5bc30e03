// One input of a line of the `method` command, as its record says: an amount, a list of them, words, a table.
import {
  declined,
  domainInWords,
  type InputSpec,
  isWithinDomain,
  type Outcome,
  succeeded,
} from "../core/base/index.ts";
import { dimensionInWords, sameDimension, unitFromCode } from "../core/units/index.ts";
import { type Amount, amountFromJson, unitBeside, type WantedAmount } from "./amount-from-json.ts";
import { kindInWords } from "./kind-in-words.ts";

type Reader = (name: string, value: unknown, spec: InputSpec) => Outcome<unknown>;

/** More items than any record of a shop has; a limit so that every line ends. */
const MOST_ITEMS = 2_000_000;
const LONGEST_TEXT = 20_000;

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === "object" && value !== null && !Array.isArray(value);

const wrongKind = (name: string, value: unknown, needed: string) =>
  declined("wrong-kind", { column: name, found: kindInWords(value), needed });

const wantedOf = ({ dimension, kind, difference }: InputSpec): WantedAmount => ({
  unit: dimension !== undefined ? unitFromCode(dimension) : kind === "number" ? unitFromCode("1") : null,
  difference: difference === true,
});

const within = (name: string, value: number, spec: InputSpec): Outcome<number> =>
  isWithinDomain(value, spec)
    ? succeeded(value)
    : declined("out-of-domain", { name: `${name} (${spec.meaning})`, needed: domainInWords(spec) });

const amount: Reader = (name, value, spec) => {
  if (Array.isArray(value) || typeof value === "boolean") return wrongKind(name, value, "one number");
  const read = amountFromJson(name, value, wantedOf(spec));
  return read.ok ? within(name, read.value.value, spec) : read;
};

/** A list of amounts that are all of one dimension, or a single one; null is a missing one, NaN to a method. */
const amounts: Reader = (name, given, spec) => {
  const whole = isRecord(given) && Array.isArray(given.value) ? given : null;
  const list: unknown = whole ? whole.value : given;
  if (!Array.isArray(list)) return amount(name, given, spec);
  const items: readonly unknown[] = list;
  const beside = unitBeside(name, whole?.["unit"]);
  if (!beside.ok) return beside;
  const wanted = wantedOf(spec);
  const values: number[] = [];
  let first: Amount | undefined;
  for (const [at, item] of items.entries()) {
    if (item === null) {
      values.push(Number.NaN);
      continue;
    }
    const place = `${name}, item ${at + 1}`;
    if (Array.isArray(item) || typeof item === "boolean") return wrongKind(place, item, "a number");
    const read = amountFromJson(place, item, wanted, beside.value);
    if (!read.ok) return read;
    first ??= read.value;
    const [one, other] = [first.dimension ?? {}, read.value.dimension ?? {}];
    if (!sameDimension(one, other))
      return declined("wrong-dimension", {
        name: place,
        found: dimensionInWords(other),
        needed: dimensionInWords(one),
      });
    const inside = within(place, read.value.value, spec);
    if (!inside.ok) return inside;
    values.push(inside.value);
  }
  return succeeded(values);
};

const isLabel = (value: unknown): value is string | number | boolean =>
  typeof value === "string" || typeof value === "boolean" || (typeof value === "number" && Number.isFinite(value));

const label: Reader = (name, value) => (isLabel(value) ? succeeded(String(value)) : wrongKind(name, value, "a label"));

/** Labels as texts: a number is the label that it is written as; null is a missing one. */
const labels: Reader = (name, value) => {
  if (!Array.isArray(value)) return wrongKind(name, value, "a list of labels");
  const odd = value.findIndex((each: unknown) => each !== null && !isLabel(each));
  return odd >= 0
    ? wrongKind(`${name}, item ${odd + 1}`, value[odd], "a label")
    : succeeded(value.map((each: unknown) => (each === null ? null : String(each))));
};

const grades: Reader = (name, value) => {
  if (!Array.isArray(value)) return wrongKind(name, value, "a list of grades");
  const odd = value.findIndex((each: unknown) => each !== null && !isLabel(each));
  if (odd >= 0) return wrongKind(`${name}, item ${odd + 1}`, value[odd], "a grade");
  const isWords = value.some((each: unknown) => typeof each === "string");
  return succeeded(value.map((each: unknown) => (each === null && !isWords ? Number.NaN : each)));
};

/** {value, unit} and no more: a record that says more of its value is for the method to read. */
const isAmountOnly = (value: Readonly<Record<string, unknown>>): boolean =>
  "value" in value && Object.keys(value).every((key) => key === "value" || key === "unit");

/** Rows of numbers or of records, or records of lists: amounts in them become SI, all else stays for the method to judge. */
function tabled(name: string, value: unknown, spec: InputSpec, depth: number): Outcome<unknown> {
  if (depth > 6) return wrongKind(name, value, "a table");
  if (isRecord(value) && isAmountOnly(value) && !Array.isArray(value.value))
    return amountFromJsonValue(name, value, spec);
  if (isRecord(value) && Array.isArray(value.value)) return amounts(name, value, spec);
  if (Array.isArray(value)) {
    const isWords = value.some((each: unknown) => typeof each === "string");
    const made: unknown[] = [];
    for (const [at, each] of value.entries()) {
      const inner = tabled(`${name}, row ${at + 1}`, each, spec, depth + 1);
      if (!inner.ok) return inner;
      made.push(inner.value === null && !isWords ? Number.NaN : inner.value);
    }
    return succeeded(made);
  }
  if (!isRecord(value)) return succeeded(value);
  const made: [string, unknown][] = [];
  for (const [key, each] of Object.entries(value)) {
    const inner = tabled(`${name}, ${key}`, each, spec, depth + 1);
    if (!inner.ok) return inner;
    made.push([key, inner.value]);
  }
  return succeeded(Object.fromEntries(made));
}
function amountFromJsonValue(name: string, value: unknown, spec: InputSpec): Outcome<number> {
  const read = amountFromJson(name, value, wantedOf(spec));
  return read.ok ? succeeded(read.value.value) : read;
}
const table: Reader = (name, value, spec) =>
  Array.isArray(value) || isRecord(value) ? tabled(name, value, spec, 0) : wrongKind(name, value, "a table");

const text: Reader = (name, value) =>
  typeof value !== "string"
    ? wrongKind(name, value, "a text")
    : value.length > LONGEST_TEXT
      ? declined("too-large", { name, most: `${LONGEST_TEXT} characters` })
      : succeeded(value);

const choice: Reader = (name, value, { choices }) => {
  const said = typeof value === "number" || typeof value === "boolean" ? String(value) : value;
  if (typeof said !== "string") return wrongKind(name, value, "a word");
  return choices === undefined || choices.includes(said)
    ? succeeded(said)
    : declined("wrong-kind", {
        column: name,
        found: `"${said.slice(0, 40)}"`,
        needed: `one of ${choices.join(", ")}`,
      });
};

const yesNo: Reader = (name, value) =>
  typeof value === "boolean"
    ? succeeded(value)
    : value === "yes" || value === "no"
      ? succeeded(value === "yes")
      : wrongKind(name, value, "yes or no");

const readers: { readonly [K in InputSpec["kind"]]: Reader } = {
  quantity: amount,
  number: amount,
  quantities: amounts,
  table,
  label,
  labels,
  grades,
  text,
  choice,
  "yes-no": yesNo,
};

/** How many items a JSON value holds, counted only as far as the limit. */
function itemsIn(value: unknown): number {
  let count = 0;
  const waiting: unknown[] = [value];
  while (waiting.length > 0 && count <= MOST_ITEMS) {
    const each = waiting.pop();
    count++;
    if (typeof each === "object" && each !== null) for (const inner of Object.values(each)) waiting.push(inner);
  }
  return count;
}

/**
 * What a method is given for one input. value: as JSON has it. spec: the input's record, whose kind says how it is read: an amount may be a number in
 * coherent SI, a written text, or {value, unit}; a list may hold such amounts in units of one dimension, or be {value: [...], unit}.
 */
export function inputFromJson(name: string, value: unknown, spec: InputSpec): Outcome<unknown> {
  if (itemsIn(value) > MOST_ITEMS) return declined("too-large", { name, most: `${MOST_ITEMS} items` });
  return readers[spec.kind](name, value, spec);
}
