// The catalogue of methods for people: what there is, by what it answers, and one record with its inputs and fields.
import { domainInWords, type InputSpec, type Method } from "../core/base/index.ts";

/** What the answers of a sort are about. A sort that has no line here stands under its own name. */
const HEADS: Readonly<Record<string, string>> = {
  relation: "How one quantity goes with another",
  comparison: "How groups differ",
  agreement: "Whether two ways of measuring or two raters agree",
  verdict: "Whether a rule holds",
  description: "What a column of readings is like",
  law: "Laws of chance",
  rig: "How good a measuring rig is",
  uncertainty: "How sure a computed number is",
  quantity: "Quantities of wood, sound and strings, units and written numbers",
};

/** All methods, a line each, under what they answer. */
export function methodsInWords(methods: readonly Method[]): string {
  const sorts = [...new Set(methods.map(({ answers }) => answers))];
  const widest = Math.max(0, ...methods.map(({ id }) => id.length));
  return sorts
    .map((sort) =>
      [
        HEADS[sort] ?? sort,
        ...methods.filter(({ answers }) => answers === sort).map(({ id, name }) => `  ${id.padEnd(widest)}  ${name}`),
      ].join("\n"),
    )
    .join("\n\n");
}

function inputInWords(name: string, spec: InputSpec): string {
  const domain = domainInWords(spec);
  const notes = [
    spec.kind,
    spec.dimension,
    spec.choices?.join(" | "),
    domain === "a number" ? undefined : domain,
    spec.optional ? "may be left out" : undefined,
  ].filter((note) => note !== undefined);
  return `  ${name} (${notes.join(", ")}): ${spec.meaning}`;
}

/** One method: its inputs, its fields, its source. */
export const methodInWords = ({ id, name, inputs, fields, source }: Method): string =>
  [
    `${id}: ${name}`,
    "inputs",
    ...Object.entries(inputs).map(([each, spec]) => inputInWords(each, spec)),
    "fields",
    ...Object.entries(fields).map(
      ([each, { meaning, dimension }]) => `  ${each}${dimension === undefined ? "" : ` (${dimension})`}: ${meaning}`,
    ),
    `source: ${source.citation}`,
  ].join("\n");
