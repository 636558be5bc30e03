// What the entries of a notebook give each other, by name: read off the syntax alone, before anything is computed.
import type { ColumnTable } from "../../core/columns/index.ts";
import type { Entry, Notebook } from "../language/index.ts";
import type { Cell, CellAmount } from "./cell.ts";
import { cells } from "./cells.ts";
import type { FileTools } from "./file-tools.ts";
import type { GridCells } from "./grid-cells.ts";

export type Surroundings = {
  /** Record tables by name, in file order. */
  readonly tables: readonly string[];
  /** Names of the formula columns of each table. */
  readonly formulas: ReadonlyMap<string, ReadonlySet<string>>;
  /** Values and dials. */
  readonly amounts: ReadonlyMap<string, Cell<CellAmount>>;
  readonly dials: ReadonlySet<string>;
  readonly rigs: ReadonlySet<string>;
  /** Keys of the entries that ask something of a table: questions and rules. */
  readonly asking: readonly string[];
  readonly lexicons: readonly Entry[];
  /** The place of a file named in this notebook, counted from the folder of the workspace. */
  readonly pathOf: (file: string) => string;
  readonly readFile: (path: string) => Promise<Uint8Array | null>;
  /** What reads and joins record files; null where all tables are given. */
  readonly tools: FileTools["tables"];
  /** How often a file was said to have changed; part of the key of its cell. */
  readonly generation: (path: string) => number;
  readonly dialStands: ReadonlyMap<string, number>;
  /** Tables that are given instead of files: in a dated copy. */
  readonly given: ReadonlyMap<string, ColumnTable> | null;
  readonly asOf: string | null;
  readonly gridCells: GridCells;
  /** Says when the notebook's place or a file has changed: other text, other plans. */
  readonly changes: string;
  /** The tables of another notebook, for `use`; null where that would go round in a ring. */
  readonly otherTables: (path: string) => Promise<ReadonlyMap<string, ColumnTable> | null> | null;
};

/** The key of an entry within its notebook: its name, with its place if another has the name already. */
export function entryKeys(notebook: Notebook): ReadonlyMap<Entry, string> {
  const keys = new Map<Entry, string>();
  const taken = new Set<string>();
  for (const entry of notebook.entries) {
    // Names are told apart by kind and name: `records tops` and `columns tops` belong together.
    let key = `${entry.kind} ${entry.name}`;
    for (let n = 2; taken.has(key); n++) key = `${entry.kind} ${entry.name} ${n}`;
    taken.add(key);
    keys.set(entry, key);
  }
  return keys;
}

/** The table that a `columns` entry adds to: its own name, or the only table where it has none. */
export const tableOfColumns = (entry: Entry, tables: readonly string[]): string =>
  !entry.named && tables.length === 1 && tables[0] !== undefined ? tables[0] : entry.name;

type Outside = Pick<
  Surroundings,
  | "pathOf"
  | "readFile"
  | "tools"
  | "generation"
  | "dialStands"
  | "given"
  | "asOf"
  | "otherTables"
  | "gridCells"
  | "changes"
>;

/** The surroundings of every entry of a notebook. */
export function surroundingsOf(notebook: Notebook, keys: ReadonlyMap<Entry, string>, outside: Outside): Surroundings {
  const tables: string[] = [];
  const formulas = new Map<string, Set<string>>();
  const amounts = new Map<string, Cell<CellAmount>>();
  const [dials, rigs] = [new Set<string>(), new Set<string>()];
  for (const entry of notebook.entries) {
    if ((entry.kind === "records" || entry.kind === "use") && entry.syntax && !tables.includes(entry.name))
      tables.push(entry.name);
    if ((entry.kind === "value" || entry.kind === "dial") && !amounts.has(entry.name))
      amounts.set(entry.name, cells.amount(entry.name));
    if (entry.kind === "dial") dials.add(entry.name);
    if (entry.kind === "rig") rigs.add(entry.name);
  }
  for (const entry of notebook.entries) {
    if (entry.syntax?.kind !== "columns") continue;
    const table = tableOfColumns(entry, tables);
    const names = formulas.get(table) ?? new Set<string>();
    for (const column of entry.syntax.columns) names.add(column.name.name);
    formulas.set(table, names);
  }
  const asking = notebook.entries
    .filter((entry) => (entry.kind === "question" || entry.kind === "rule") && entry.syntax)
    .map((entry) => keys.get(entry) ?? entry.name);
  return {
    tables,
    formulas,
    amounts,
    dials,
    rigs,
    asking,
    lexicons: notebook.entries.filter((entry) => entry.kind === "lexicon"),
    ...outside,
  };
}
