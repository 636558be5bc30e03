/** A row at its place, or a gap of so many rows that end before a place. */
export type DrawnPart = { readonly position: number } | { readonly gap: number; readonly before: number };

/** What the grid draws, in order: rows `first` to `last`, the active one wherever it is, and gaps as tall as what is left out. */
export function rowsToDraw(first: number, last: number, active: number, count: number): readonly DrawnPart[] {
  if (count === 0) return [];
  const positions = new Set<number>([Math.min(active, count - 1)]);
  for (let each = Math.max(0, first); each <= Math.min(last, count - 1); each++) positions.add(each);
  const parts: DrawnPart[] = [];
  let next = 0;
  for (const position of [...positions].sort((a, b) => a - b)) {
    if (position > next) parts.push({ gap: position - next, before: position });
    parts.push({ position });
    next = position + 1;
  }
  if (next < count) parts.push({ gap: count - next, before: count });
  return parts;
}
