// What fits at a place while a sentence is written: words of the sentences, and the names that exist.
import { entryForms, isEntryKindId } from "./entry-forms.ts";
import { type Fitting, fittingWords } from "./fitting-words.ts";
import { logicalLines } from "./logical-lines.ts";
import { printEntryName } from "./print-entry-name.ts";

/** The names a notebook has to offer. */
export type CompletionNames = {
  readonly columns: readonly string[];
  readonly functions: readonly string[];
  readonly methods: readonly string[];
  readonly units: readonly string[];
  readonly tables: readonly string[];
};

export type Completion = {
  readonly label: string;
  readonly is: "word" | "column" | "function" | "method" | "unit" | "table";
  readonly from: number;
};

const named = (fitting: Fitting, names: CompletionNames): readonly Omit<Completion, "from">[] => [
  ...(fitting.things.includes("a column or a formula") || fitting.things.includes("a name")
    ? names.columns.map((label) => ({ label, is: "column" as const }))
    : []),
  ...(fitting.things.includes("a column or a formula")
    ? names.functions.map((label) => ({ label, is: "function" as const }))
    : []),
  ...(fitting.things.includes("the name of a method")
    ? names.methods.map((label) => ({ label: printEntryName(label), is: "method" as const }))
    : []),
  ...(fitting.things.includes("the name of an entry")
    ? names.tables.map((label) => ({ label: printEntryName(label), is: "table" as const }))
    : []),
  ...(fitting.things.includes("a unit") ? names.units.map((label) => ({ label, is: "unit" as const })) : []),
];

/** How much before the cursor is looked at for what is half written: longer than any name or run of words. */
const LONGEST = 200;

/** Every completion that fits. offset: the cursor, in UTF-16 units within the body; what is begun before it is replaced from `from` on. */
export function completionsAt(
  body: string,
  kind: string,
  offset: number,
  names: CompletionNames,
): readonly Completion[] {
  if (!isEntryKindId(kind)) return [];
  const written = body.slice(0, offset);
  const line =
    entryForms[kind].byLine && !/\n[ \t]*$/.test(written)
      ? logicalLines(written).at(-1)
      : entryForms[kind].byLine
        ? { from: offset, text: "" }
        : undefined;
  const base = line?.from ?? 0;
  const text = written.slice(base);
  const end = text.slice(-LONGEST);
  const partial = /[\p{L}\p{N}_°%/-]*$/u.exec(end)?.[0] ?? "";
  const at = text.length - partial.length;
  const fitting = fittingWords(kind, text.slice(0, at));
  const found: Completion[] = [
    ...named(fitting, names)
      .filter(({ label }) => label.startsWith(partial))
      .map((each) => ({ ...each, from: base + at })),
    ...fitting.words
      .filter((word) => word.startsWith(partial))
      .map((label) => ({ label, is: "word" as const, from: base + at })),
  ];
  // A run of words half written: "allowing f" goes on as "allowing for".
  for (const begun of [/[\p{L}]+\s+[\p{L}]*$/u, /[\p{L}]+\s+[\p{L}]+\s+[\p{L}]*$/u].map(
    (pattern) => pattern.exec(end)?.[0],
  )) {
    if (begun === undefined) continue;
    const from = text.length - begun.length;
    const spelt = begun.replace(/\s+/g, " ");
    for (const label of fittingWords(kind, text.slice(0, from)).words)
      if (label.startsWith(spelt) && label !== spelt) found.push({ label, is: "word", from: base + from });
  }
  return found;
}
