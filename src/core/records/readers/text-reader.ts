// Columns of words: kept as written, aliases by the maker's word only, look-alike spellings pointed out.

import type { StoredCell } from "../source/stored-cell.ts";
import { aliasKey } from "./alias-key.ts";
import { cellsWith } from "./cells-with.ts";
import type { ColumnCell, ColumnReader, ColumnReading, ColumnSource } from "./column-source.ts";
import { hasWord, rowsOf, wordsOf } from "./column-source.ts";
import { asText, reading } from "./field.ts";
import { isInexact } from "./is-inexact.ts";
import { plainWordsOf } from "./plain-words-of.ts";
import { draftVote } from "./quantity-draft.ts";
import { spellingVaries } from "./spelling-varies.ts";

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
export const isIdColumn = ({ name, unit, kind }: Pick<ColumnSource, "name" | "unit" | "kind">): boolean =>
  unit === null && (kind ?? "text") === "text" && hasWord({ words: wordsOf(name) }, ID_WORDS);

const SCIENTIFIC = /^\d(?:[.,]\d{1,15}E\+?|E\+)\d{1,3}$/i;
const BEYOND = "9007199254740992";
const isBeyond = (text: string) => /^\d{16,}$/.test(text) && (text.length > BEYOND.length || text > BEYOND);

/** Whether a sheet has stored a number of more digits than it keeps. */
const isLost = (stored: StoredCell | undefined): boolean => stored?.as === "number" && isInexact(stored.value);

/** Whether the digits of a column are names: a leading zero or more digits than a number keeps, no unit, no decimals. */
export function isDigitNames(source: ColumnSource): boolean {
  const { padded, point, comma, waiting, unit, fractions } = source.numerals;
  if (source.unit !== null || unit !== null || point + comma + waiting + fractions > 0) return false;
  let found = padded > 0;
  for (const { special, field, draft, stored } of source.cells) {
    if (special !== null) continue;
    const { text } = field;
    if (/^0\d+$/.test(text) || isBeyond(text) || isLost(stored)) found = true;
    if (
      draft !== null &&
      draft.form !== "none" &&
      (draft.unit !== null || (draftVote(draft) !== null && !SCIENTIFIC.test(text)))
    )
      return false;
  }
  return found || plainWordsOf(source).some((word) => /^0\d+$/.test(word) || isBeyond(word));
}

/** The maker's names for spellings of this column. */
function aliasesOf(source: ColumnSource): ReadonlyMap<string, string> {
  const all = new Map(Object.entries(source.options.aliases ?? {}));
  return new Map(Object.entries(all.get(source.name) ?? {}).map(([spelling, name]) => [aliasKey(spelling), name]));
}

function read(source: ColumnSource): ColumnReading {
  const aliases = aliasesOf(source);
  const isRounded = source.cells.some(({ field }) => SCIENTIFIC.test(field.text));
  const names = isRounded && (isIdColumn(source) || isDigitNames(source));
  const cells = cellsWith(
    source,
    ({ field: own, stored }: ColumnCell) => {
      const field = stored === undefined ? own : { ...own, text: own.raw.trim() };
      const alias = aliases.size > 0 ? aliases.get(aliasKey(field.text)) : undefined;
      if (alias !== undefined) return reading(field, "text", alias);
      if (isLost(stored)) return asText(field, "precision-lost");
      return asText(field, names && SCIENTIFIC.test(field.text) ? "id-as-scientific" : undefined);
    },
    true,
    (text) => /^(?:none|nil|unknown)$/i.test(text),
  );
  const varies = spellingVaries(source, cells, new Set(aliases.values()));
  return { unit: source.unit, cells, warnings: varies ? ["spelling-varies"] : [] };
}

export const textReader: ColumnReader = {
  kind: "text",
  fits: (source, counted) => rowsOf(counted) + source.numerals.all,
  read,
};
