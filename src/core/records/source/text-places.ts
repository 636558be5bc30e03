// The different texts of a column, each once: a hash table over stretches of the file's text, so that an equal text costs no string.

/** `starts`, `ends`, `hashes`, `counts` by place, in order of first appearance; `slots` hold places from 1. */
export type TextPlaces = {
  readonly text: string;
  size: number;
  slots: Int32Array;
  starts: Int32Array;
  ends: Int32Array;
  hashes: Int32Array;
  counts: Int32Array;
  /** Texts whose slots were all taken: a file made to collide is no slower than others. */
  readonly crowded: Map<string, number>;
};
const MOST_PROBES = 24;

/** Hash of a stretch of text: Fowler, Noll and Vo's 1a, with the bits mixed at the end. */
export function stretchHash(text: string, start: number, end: number): number {
  let hash = 0x811c9dc5;
  for (let at = start; at < end; at++) hash = Math.imul(hash ^ text.charCodeAt(at), 0x01000193);
  return Math.imul(hash ^ (hash >>> 15), 0x2c1b3c6d);
}

/** Whether two stretches hold the same characters. */
export function isSameStretch(text: string, a: number, endA: number, b: number, endB: number): boolean {
  if (endA - a !== endB - b) return false;
  for (let at = 0; at < endA - a; at++) if (text.charCodeAt(a + at) !== text.charCodeAt(b + at)) return false;
  return true;
}

const wider = (list: Int32Array, length: number) => {
  const copy = new Int32Array(length);
  copy.set(list);
  return copy;
};

export const noTexts = (text: string): TextPlaces => ({
  text,
  size: 0,
  slots: new Int32Array(256),
  starts: new Int32Array(64),
  ends: new Int32Array(64),
  hashes: new Int32Array(64),
  counts: new Int32Array(64),
  crowded: new Map(),
});

function grow(places: TextPlaces): void {
  const room = places.starts.length * 4;
  for (const list of ["starts", "ends", "hashes", "counts"] as const) places[list] = wider(places[list], room);
  const { text, size, starts, ends, hashes, crowded } = places;
  const slots = new Int32Array(room * 4);
  const mask = slots.length - 1;
  for (let place = 0; place < size; place++) {
    let slot = (hashes[place] ?? 0) & mask;
    for (let probe = 0; slots[slot] !== 0 && probe < MOST_PROBES; probe++) slot = (slot + 1) & mask;
    if (slots[slot] === 0) slots[slot] = place + 1;
    else crowded.set(text.slice(starts[place], ends[place]), place);
  }
  places.slots = slots;
}

/** A new place for a stretch. */
function addedPlace(places: TextPlaces, start: number, end: number, hash: number): number {
  if (places.size === places.starts.length) grow(places);
  const place = places.size++;
  places.starts[place] = start;
  places.ends[place] = end;
  places.hashes[place] = hash;
  places.counts[place] = 1;
  return place;
}

/** The place of the text of a stretch, counted once more; a new place where it was not seen before. */
export function placeOf(places: TextPlaces, start: number, end: number, hash: number): number {
  if (places.size === places.starts.length) grow(places);
  const { text, slots, starts, ends, hashes, counts } = places;
  const mask = slots.length - 1;
  let slot = hash & mask;
  for (let probe = 0; probe < MOST_PROBES; probe++) {
    const place = (slots[slot] ?? 0) - 1;
    if (place < 0) {
      const added = addedPlace(places, start, end, hash);
      slots[slot] = added + 1;
      return added;
    }
    if (hashes[place] === hash && isSameStretch(text, starts[place] ?? 0, ends[place] ?? 0, start, end)) {
      counts[place] = (counts[place] ?? 0) + 1;
      return place;
    }
    slot = (slot + 1) & mask;
  }
  const key = text.slice(start, end);
  const known = places.crowded.get(key);
  if (known !== undefined) {
    counts[known] = (counts[known] ?? 0) + 1;
    return known;
  }
  const added = addedPlace(places, start, end, hash);
  places.crowded.set(key, added);
  return added;
}
