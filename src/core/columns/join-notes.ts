// What joining two tables leaves to be said: nothing is dropped, and nothing is doubled without a word.
import { columnNotes, someNames } from "./column-notes.ts";
import type { ColumnTable } from "./column-table.ts";
import { type JoinKeys, keysPresent } from "./join-keys.ts";
import { lookAlikeKey } from "./look-alike-key.ts";

/** The file that a table's first column comes from, which tells two tables of one notebook entry apart; else its name. */
function fileOf(table: ColumnTable): string {
  for (const { origin } of table.columns.values()) if (origin.from === "file") return origin.file;
  return table.name;
}

/** Records of one side whose key the other has not, by key or, without one, by row. */
function unmatched(
  { rows }: ColumnTable,
  places: Int32Array,
  other: Uint8Array,
  { texts }: JoinKeys,
  on: string,
): readonly string[] {
  const names: string[] = [];
  for (let row = 0; row < places.length; row++) {
    const place = places[row] as number;
    if (place < 0) names.push(`row ${rows[row]?.row ?? row + 1} without ${on}`);
    else if (other[place] === 0) names.push(texts[place] ?? "");
  }
  return names;
}

/** So many look-alikes are named; of more, the number. */
const NAMED = 5;

/** Keys of one table that look like one of the other and are not the same; only where at least one of the two has no match. */
function lookAlikes({ texts }: JoinKeys, left: Uint8Array, right: Uint8Array): readonly string[] {
  const alone = (place: number): boolean => left[place] !== right[place];
  if (left.every((present, place) => present === right[place])) return [];
  const twins = new Map<string, number>();
  const keys = texts.map(lookAlikeKey);
  // Of several that look the same, one without a match is the one to point out.
  for (const [place, key] of keys.entries())
    if (right[place] === 1 && (alone(place) || !twins.has(key))) twins.set(key, place);
  const pairs = keys.flatMap((key, place) => {
    const twin = left[place] === 1 ? twins.get(key) : undefined;
    return twin === undefined || twin === place || !(alone(place) || alone(twin)) ? [] : [[place, twin] as const];
  });
  const said = pairs
    .slice(0, NAMED)
    .map(([place, twin]) => columnNotes["look-alike"]({ left: texts[place] ?? "", right: texts[twin] ?? "" }));
  return pairs.length > NAMED ? [...said, columnNotes["more-look-alike"]({ count: pairs.length - NAMED })] : said;
}

/** The remarks, gravest last. counts: rows with each key, left and right; shares: whether rows of one key now share evidence. */
export function joinNotes(
  [left, right]: readonly [ColumnTable, ColumnTable],
  on: string,
  keys: JoinKeys,
  [leftCounts, rightCounts]: readonly [Int32Array, Int32Array],
  shares: boolean,
): readonly string[] {
  const names = { left: fileOf(left), right: fileOf(right) };
  const inLeft = keysPresent(keys.left, keys.texts.length);
  const inRight = keysPresent(keys.right, keys.texts.length);
  const doubled: number[] = [];
  for (let place = 0; place < keys.texts.length; place++)
    if ((leftCounts[place] ?? 0) > 0 && (rightCounts[place] ?? 0) > 1) doubled.push(place);
  const oneToSeveral = doubled.filter((place) => leftCounts[place] === 1);
  const severalToSeveral = doubled.filter((place) => (leftCounts[place] ?? 0) > 1);
  const keysOf = (some: readonly number[]): string => someNames(some.map((place) => keys.texts[place] ?? ""));
  const alone = unmatched(left, keys.left, inRight, keys, on);
  const unused = unmatched(right, keys.right, inLeft, keys, on);
  const notes: string[] = [];
  if (oneToSeveral.length > 0)
    notes.push(columnNotes["matched-several"]({ ...names, count: oneToSeveral.length, keys: keysOf(oneToSeveral) }));
  if (severalToSeveral.length > 0) {
    const size = (place: number) => [leftCounts[place] ?? 0, rightCounts[place] ?? 0] as const;
    notes.push(
      columnNotes["several-to-several"]({
        ...names,
        on,
        rows: severalToSeveral.reduce((sum, place) => sum + size(place)[0] * size(place)[1], 0),
        keys: someNames(severalToSeveral.map((place) => `${keys.texts[place]} (${size(place).join(" by ")})`)),
      }),
    );
  }
  if (shares) notes.push(columnNotes["rows-share"]({ on }));
  if (alone.length > 0)
    notes.push(columnNotes["unmatched-left"]({ ...names, count: alone.length, keys: someNames(alone) }));
  if (unused.length > 0)
    notes.push(columnNotes["unmatched-right"]({ ...names, count: unused.length, keys: someNames(unused) }));
  return [...notes, ...lookAlikes(keys, inLeft, inRight)];
}
