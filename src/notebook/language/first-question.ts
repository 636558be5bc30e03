// The first question of a new notebook, out of what its columns can answer. Each idea is a record; the first that fits is asked.
import { printName } from "../../core/formula/index.ts";
import { isDimensionless, sameDimension, unitFromCode } from "../../core/units/index.ts";
import type { ColumnSketch } from "./column-sketches.ts";

/** `prose`: the question as people ask it; `sentence`: as the notebook does. */
export type FirstQuestion = { readonly prose: string; readonly sentence: string };

type Columns = readonly ColumnSketch[];
type Idea = (columns: Columns) => FirstQuestion | null;

const HALF = 0.5;
const [FEWEST_GROUPS, MOST_GROUPS] = [2, 8];
const pressure = unitFromCode("GPa").dimension;

const measured = (columns: Columns): Columns =>
  columns.filter(({ kind, filled, values }) => kind === "quantity" && filled >= HALF && values > 2);
/** Labels that part the records into a few groups, each of more than one. */
const grouping = (columns: Columns): Columns =>
  columns.filter(
    ({ kind, filled, values, groups }) =>
      kind === "label" && filled >= HALF && groups >= FEWEST_GROUPS && values <= MOST_GROUPS,
  );
const hasWord = ({ name }: ColumnSketch, words: ReadonlySet<string>) => name.split("_").some((word) => words.has(word));
/** The column that is asked about: a final one before others, then one that is not a number without a unit. */
const FINAL = new Set(["final", "finished", "end", "planed", "result", "sustain", "loudness"]);
const asked = (columns: Columns): ColumnSketch | undefined =>
  columns.find((column) => hasWord(column, FINAL)) ??
  columns.find(({ dimension }) => dimension !== null && !isDimensionless(dimension)) ??
  columns[0];

const against = (y: ColumnSketch, x: ColumnSketch): FirstQuestion => ({
  prose: `Does ${y.header} go with ${x.header}?`,
  sentence: `${printName(y.name)} against ${printName(x.name)}`,
});

/** A length that came out at the end, against a stiffness: the rule that most makers have. */
const THICK = new Set(["thickness", "thick", "dicke", "stärke", "grosor", "espesor", "épaisseur"]);
const stiffness: Idea = (columns) => {
  const stiff = measured(columns).find(({ dimension }) => dimension !== null && sameDimension(dimension, pressure));
  const thick = asked(measured(columns).filter((column) => hasWord(column, THICK)));
  return stiff && thick ? against(thick, stiff) : null;
};

/** Two ways of measuring one thing: same dimension, and one of them is the reference. */
const REFERENCE = new Set(["reference", "nominal", "true", "standard", "check", "referenz", "soll", "referencia"]);
const reference: Idea = (columns) => {
  const known = measured(columns).find((column) => hasWord(column, REFERENCE));
  const other = measured(columns).find(
    (column) =>
      column !== known &&
      known?.dimension !== undefined &&
      known.dimension !== null &&
      column.dimension !== null &&
      sameDimension(column.dimension, known.dimension),
  );
  return known && other
    ? {
        prose: `Do ${other.header} and ${known.header} agree?`,
        sentence: `${printName(other.name)} beside ${printName(known.name)}`,
      }
    : null;
};

const groups: Idea = (columns) => {
  const [by] = grouping(columns);
  const what = asked(measured(columns));
  return by && what
    ? {
        prose: `Does ${what.header} differ by ${by.header}?`,
        sentence: `${printName(what.name)} across ${printName(by.name)}`,
      }
    : null;
};

const relation: Idea = (columns) => {
  const y = asked(measured(columns));
  const x = measured(columns).find((column) => column !== y);
  return y && x ? against(y, x) : null;
};

const words: Idea = (columns) => {
  const [by] = grouping(columns);
  const notes = columns.find(({ kind, filled }) => kind === "words" && filled > 0);
  return by && notes
    ? {
        prose: `Which words of ${notes.header} go with which ${by.header}?`,
        sentence: `words of ${printName(notes.name)} across ${printName(by.name)}`,
      }
    : null;
};

const ideas: readonly Idea[] = [stiffness, reference, groups, relation, words];

/** A question that these columns can answer; null where they can answer none yet. */
export function firstQuestion(columns: Columns): FirstQuestion | null {
  for (const idea of ideas) {
    const found = idea(columns);
    if (found !== null) return found;
  }
  return null;
}
