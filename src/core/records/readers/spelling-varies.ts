// Two spellings of one name, likely: they differ only by accents, case, spaces, hyphens, dots or underscores.
import type { Reading } from "../reading.ts";
import type { TextPlaces } from "../source/text-places.ts";
import type { ColumnSource } from "./column-source.ts";

/** A text without what spellings of one name differ in. */
export const likeness = (text: string) =>
  text
    .normalize("NFD")
    .replace(/[\u0300-\u036f\s._\-‐‑–—]/gu, "")
    .toLowerCase();

const isSkipped = (code: number) => code === 32 || code === 45 || code === 46 || code === 95;
const lower = (code: number) => (code >= 65 && code <= 90 ? code + 32 : code);

/** Hash of the likeness of a stretch of ASCII, from its characters. */
function likeHash(text: string, start: number, end: number): number {
  let hash = 0x811c9dc5;
  for (let at = start; at < end; at++) {
    const code = text.charCodeAt(at);
    if (!isSkipped(code)) hash = Math.imul(hash ^ lower(code), 0x01000193);
  }
  return Math.imul(hash ^ (hash >>> 15), 0x2c1b3c6d);
}

const MOST_PROBES = 24;
/** How many plain words were looked at by their characters before their likenesses are made as texts. */
type LikeSlots = { readonly texts: TextPlaces; readonly slots: Int32Array; readonly hashes: Int32Array };

/** The plain word of the same likeness, -1 if there is none yet, -2 where others are in the way and the text must tell. `slot` is taken then. */
function likePlace({ texts, slots, hashes }: LikeSlots, hash: number, key: string | null, place: number): number {
  const mask = slots.length - 1;
  let slot = hash & mask;
  for (let probe = 0; probe < MOST_PROBES; probe++) {
    const other = (slots[slot] ?? 0) - 1;
    if (other < 0) {
      if (place >= 0) slots[slot] = place + 1;
      return -1;
    }
    if (hashes[other] === hash) {
      // One comparison at most: of words made to collide, all but the first are kept as texts.
      const text = (at: number) => texts.text.slice(texts.starts[at], texts.ends[at]);
      return likeness(text(other)) === (key ?? likeness(text(place))) ? other : -2;
    }
    slot = (slot + 1) & mask;
  }
  return -2;
}

/** Whether two values differ by spelling alone. `settled`: names given as aliases; two of them differ because the maker says so. */
export function spellingVaries(source: ColumnSource, cells: readonly Reading[], settled: ReadonlySet<string>): boolean {
  const { texts } = source.scan;
  const room = 2 ** Math.ceil(Math.log2(texts.size * 2 + 16));
  const like = { texts, slots: new Int32Array(room), hashes: new Int32Array(texts.size) };
  const written = new Map<string, string>();
  const wordAt = (place: number) => texts.text.slice(texts.starts[place], texts.ends[place]);
  /** Whether a value varies from an earlier one of its likeness; what the slots could not take is kept as text. */
  const varies = (value: string, other: number) => {
    const key = likeness(value);
    const before = other >= 0 ? wordAt(other) : written.get(key);
    if (key === "" || (before !== undefined && before !== value && !(settled.has(before) && settled.has(value))))
      return key !== "";
    written.set(key, value);
    return false;
  };
  for (let place = 0; place < texts.size; place++) {
    if ((source.cellAt[place] ?? 0) >= 0) continue;
    const hash = likeHash(texts.text, texts.starts[place] ?? 0, texts.ends[place] ?? 0);
    like.hashes[place] = hash;
    const other = likePlace(like, hash, null, place);
    if (other !== -1 && varies(wordAt(place), other)) return true;
  }
  for (const { kind, value } of cells) {
    if (kind !== "text" || typeof value !== "string") continue;
    const key = likeness(value);
    if (varies(value, likePlace(like, likeHash(key, 0, key.length), key, -1))) return true;
  }
  return false;
}
