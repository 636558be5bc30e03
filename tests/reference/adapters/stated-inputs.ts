// What a case says of the inputs of its model, in the case's order, under the symbols of the model.
import type { Inputs, StatsCase } from "../stats-case.ts";

type Entry = Readonly<Record<string, unknown>> & { readonly name: string };

const isRecord = (value: unknown): value is Inputs =>
  typeof value === "object" && value !== null && !Array.isArray(value);
const UNCERTAINTIES = /^(u|uncertaint(y|ies)|standard_uncertaint(y|ies)|sd)$/;
const DEGREES = /^(df|degrees_of_freedom)$/;

/** What stands for one name in a record of uncertainties; its unit may be written behind either name. */
const under = (record: Readonly<Record<string, unknown>>, name: string): unknown => {
  const key = Object.keys(record).find(
    (one) => one === name || name.startsWith(`${one}_`) || one.startsWith(`${name}_`),
  );
  return key === undefined ? undefined : record[key];
};

/** `{readings: {...}, u: {...}}`, or `mass_kg` beside `u_mass`, or lists of readings, or a list of records. */
function entriesOf(data: Inputs): readonly Entry[] {
  if (Array.isArray(data.inputs))
    return (data.inputs as readonly unknown[])
      .filter(isRecord)
      .map((one) => ({ ...one, name: String(one.name ?? "") }));
  const nested = Object.entries(data).filter(([, value]) => isRecord(value)) as [string, Inputs][];
  const flat = Object.entries(data).filter(([, value]) => !isRecord(value));
  const stripped = (prefix: RegExp): Inputs =>
    Object.fromEntries(
      flat.filter(([key]) => prefix.test(key)).map(([key, value]) => [key.replace(prefix, ""), value]),
    );
  const uncertainties = { ...stripped(/^u_/), ...nested.find(([key]) => UNCERTAINTIES.test(key))?.[1] };
  const degrees = { ...stripped(/^df_/), ...nested.find(([key]) => DEGREES.test(key))?.[1] };
  const values = [
    ...flat.filter(([key]) => !/^(u|df|r)_/.test(key)),
    ...nested
      .filter(([key]) => !UNCERTAINTIES.test(key) && !DEGREES.test(key))
      .flatMap(([, value]) => Object.entries(value)),
  ];
  return values.map(([name, value]) =>
    Array.isArray(value)
      ? { name, readings: value }
      : {
          name,
          ...(isRecord(value) ? value : { value }),
          ...(under(uncertainties, name) === undefined ? {} : { u: under(uncertainties, name) }),
          ...(typeof under(degrees, name) === "number" ? { df: under(degrees, name) } : {}),
        },
  );
}

/** What letters commonly stand for. */
const LETTERS: Readonly<Record<string, string>> = {
  m: "mass",
  L: "length",
  l: "length",
  W: "width",
  w: "width",
  b: "width",
  h: "thickness",
  t: "thickness",
  T: "thickness",
  f: "frequency",
  F: "force",
  y: "deflection",
  d: "deflection",
  rho: "density",
  V: "volume",
};

/** The symbol of each entry: the same name, the name before its unit, the common letter, the same first letter, what is left over in order. */
function symbolsOf(names: readonly string[], symbols: readonly string[]): ReadonlyMap<string, string> {
  const found = new Map<string, string>();
  const left = () => symbols.filter((symbol) => ![...found.values()].includes(symbol));
  const matches: readonly ((name: string, symbol: string) => boolean)[] = [
    (name, symbol) => name === symbol,
    (name, symbol) => name.startsWith(`${symbol}_`),
    (name, symbol) => name.toLowerCase() === symbol.toLowerCase(),
    (name, symbol) => LETTERS[symbol] !== undefined && name.startsWith(LETTERS[symbol]),
    (name, symbol) => name[0] === symbol[0],
    (name, symbol) => name[0]?.toLowerCase() === symbol[0]?.toLowerCase(),
    () => true,
  ];
  for (const match of matches)
    for (const name of names) {
      const symbol = found.has(name) ? undefined : left().find((one) => match(name, one));
      if (symbol !== undefined) found.set(name, symbol);
    }
  return found;
}

/** The pairs of a square table of correlations, rows and columns in the order of the entries. */
const pairsOfTable = (table: readonly (readonly unknown[])[], entries: readonly Entry[]): readonly Inputs[] =>
  table.flatMap((row, i) =>
    row
      .slice(0, i)
      .flatMap((coefficient, j) =>
        coefficient === 0 ? [] : [{ between: [entries[i]?.name, entries[j]?.name], coefficient }],
      ),
  );

/** Correlations as a list of records, as a square table, or as `r_AB` beside the numbers. */
function correlationsOf({ data, options }: StatsCase, entries: readonly Entry[]): readonly Inputs[] {
  const all = { ...data, ...options };
  const stated = all.correlations ?? all.correlation;
  const isTable = Array.isArray(stated) && stated.length === entries.length && stated.every(Array.isArray);
  const listed = (
    isTable
      ? pairsOfTable(stated as readonly (readonly unknown[])[], entries)
      : Array.isArray(stated)
        ? stated
        : isRecord(stated) && stated.between
          ? [stated]
          : []
  ) as readonly Inputs[];
  const pairs = entries.flatMap((a) => entries.map((b) => [a.name, b.name] as const));
  const lettered = Object.entries({ ...all, ...(isRecord(stated) ? stated : {}) }).flatMap(([key, value]) => {
    const bare = key.replace(/^r_/, "");
    const pair = pairs.find(([a, b]) => a !== b && [`${a}${b}`, `${a}_${b}`, `${a},${b}`, `${a}-${b}`].includes(bare));
    return pair && typeof value === "number" ? [{ between: pair, coefficient: value }] : [];
  });
  return ([...listed, ...lettered] as readonly Inputs[]).map((one) => ({
    between: one.between,
    coefficient: one.coefficient ?? one.r ?? one.value,
  }));
}

/** Inputs of the method under the model's symbols, and those symbols in the case's order. */
export function statedInputs(one: StatsCase, symbols: readonly string[]) {
  const entries = entriesOf(one.data);
  const symbolOf = symbolsOf(
    entries.map(({ name }) => name),
    symbols,
  );
  const renamed = (name: unknown) => symbolOf.get(String(name)) ?? String(name);
  const used = entries.filter(({ name }) => symbolOf.has(name));
  const correlations = correlationsOf(one, entries);
  return {
    inputs: used.map((entry) => ({ ...entry, name: renamed(entry.name) })),
    order: used.map(({ name }) => renamed(name)),
    ...(correlations.length > 0
      ? {
          correlations: correlations.map(({ between, coefficient }) => ({
            between: Array.isArray(between) ? between.map(renamed) : between,
            coefficient,
          })),
        }
      : {}),
  };
}
