/** Fewest insertions, deletions, replacements and swaps of neighbours that turn one text into the other. Source: optimal string alignment distance. */
function editDistance(a: string, b: string): number {
  let beforeLast: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const replaced = (last[j - 1] ?? 0) + (a[i - 1] === b[j - 1] ? 0 : 1);
      const swapped =
        i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]
          ? (beforeLast[j - 2] ?? 0) + 1
          : Number.POSITIVE_INFINITY;
      row.push(Math.min((last[j] ?? 0) + 1, (row[j - 1] ?? 0) + 1, replaced, swapped));
    }
    [beforeLast, last] = [last, row];
  }
  return last[b.length] ?? 0;
}

const LONGEST = 100;

/** The known name nearest to a misspelt one, the first in order at a tie; undefined if more than a third of its letters (at least one) differ. */
export function nearestName(name: string, known: Iterable<string>): string | undefined {
  let best: { readonly name: string; readonly distance: number } | undefined;
  if (name.length > LONGEST) return undefined;
  for (const each of known) {
    if (Math.abs(each.length - name.length) > name.length / 3 + 1) continue;
    const distance = editDistance(name, each);
    if (distance <= Math.max(1, Math.floor(name.length / 3)) && (!best || distance < best.distance))
      best = { name: each, distance };
  }
  return best?.name;
}
