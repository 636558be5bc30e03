import { declined, type Outcome, succeeded } from "../../base/index.ts";

/** Columns of a design out of one input, each with a name: a quantity as it is, words by a column of 0 and 1 for each level but the first. */
export type CodedColumns = { readonly columns: readonly Float64Array[]; readonly names: readonly string[] };

/** values: of one input, none missing. order: levels in their order, those not named follow by name; the first is what the others are set against. */
export function codedColumns(
  name: string,
  values: readonly unknown[],
  order: readonly string[],
): Outcome<CodedColumns> {
  if (values.every((value) => typeof value === "number"))
    return succeeded({ columns: [Float64Array.from(values as readonly number[])], names: [name] });
  const words = values.map(String);
  const present = [...new Set(words)];
  const rest = present.filter((level) => !order.includes(level)).sort();
  const levels = [...order.filter((level) => present.includes(level)), ...rest];
  if (levels.length < 2) return declined("one-group", { column: name, group: levels[0] ?? "none" });
  if (levels.length > 60) return declined("too-large", { name, most: "60 different words" });
  return succeeded({
    columns: levels.slice(1).map((level) => Float64Array.from(words, (word) => (word === level ? 1 : 0))),
    names: levels.slice(1).map((level) => `${name}: ${level}`),
  });
}
