// Columns of words: kept as written, aliases by the maker's word only, look-alike spellings pointed out.
import type { Reading } from "../reading.ts";
import { cellsWith } from "./cells-with.ts";
import type { ColumnCell, ColumnReader, ColumnSource } from "./column-source.ts";
import { hasWord } from "./column-source.ts";
import { asText, reading } from "./field.ts";

const ID_WORDS = new Set([
  "id",
  "ids",
  "piece",
  "board",
  "code",
  "no",
  "nr",
  "num",
  "number",
  "serial",
  "lot",
  "batch",
  "sku",
  "ref",
  "instrument",
  "top",
  "stück",
  "pieza",
  "pièce",
  "tabla",
]);

/** Whether the column names pieces: by a word of its name, without a unit. */
export const isIdColumn = (source: ColumnSource): boolean => source.unit === null && hasWord(source, ID_WORDS);

const SCIENTIFIC = /^\d[.,]\d{1,15}E\+?\d{1,3}$/i;
const BEYOND = "9007199254740992";
const isBeyond = (text: string) => /^\d{16,}$/.test(text) && (text.length > BEYOND.length || text > BEYOND);

/** Whether the digits of a column are names: a leading zero or more digits than a number keeps, no unit, no decimals. */
export function isDigitNames(source: ColumnSource): boolean {
  if (source.unit !== null) return false;
  let found = false;
  for (const { special, field, draft } of source.cells) {
    if (special !== null) continue;
    const { text } = field;
    if (/^0\d+$/.test(text) || isBeyond(text)) found = true;
    if (
      draft !== null &&
      draft.form !== "none" &&
      (draft.unit !== null || (/^[\d.,]*[.,][\d.,]*$/.test(text) && !SCIENTIFIC.test(text)))
    )
      return false;
  }
  return found;
}

/** A text without what spellings of one name differ in. */
export const likeness = (text: string) =>
  text
    .normalize("NFD")
    .replace(/[\u0300-\u036f\s._\-‐‑–—]/gu, "")
    .toLowerCase();

/**
 * Whether two values differ only by accents, case, spaces, hyphens, dots or underscores. settled: names that the maker has given as
 * aliases; two of them differ because the maker says so.
 */
function spellingVaries(cells: readonly Reading[], settled: ReadonlySet<string>): boolean {
  const written = new Map<string, string>();
  for (const { kind, value } of cells) {
    if (kind !== "text" || typeof value !== "string") continue;
    const key = likeness(value);
    if (key === "") continue;
    const before = written.get(key);
    if (before !== undefined && before !== value && !(settled.has(before) && settled.has(value))) return true;
    written.set(key, value);
  }
  return false;
}

const aliasKey = (text: string) => text.trim().split(/\s+/u).join(" ").toLowerCase();

/** The maker's names for spellings of this column. */
function aliasesOf(source: ColumnSource): ReadonlyMap<string, string> {
  const all = new Map(Object.entries(source.options.aliases ?? {}));
  return new Map(Object.entries(all.get(source.name) ?? {}).map(([spelling, name]) => [aliasKey(spelling), name]));
}

function read(source: ColumnSource) {
  const aliases = aliasesOf(source);
  const names = isIdColumn(source) || isDigitNames(source);
  const cells = cellsWith(
    source,
    ({ field }: ColumnCell) => {
      const alias = aliases.size > 0 ? aliases.get(aliasKey(field.text)) : undefined;
      if (alias !== undefined) return reading(field, "text", alias);
      return asText(field, names && SCIENTIFIC.test(field.text) ? "id-as-scientific" : undefined);
    },
    true,
    (text) => /^(?:none|nil|unknown)$/i.test(text),
  );
  return {
    unit: source.unit,
    cells,
    warnings: spellingVaries(cells, new Set(aliases.values())) ? ["spelling-varies"] : [],
  };
}

export const textReader: ColumnReader = { kind: "text", fits: (_, counted) => counted.length, read };
