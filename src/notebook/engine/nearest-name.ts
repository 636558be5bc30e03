// "Did you mean": the known name that a misspelt one is closest to.

/** Fewest insertions, deletions, replacements and swaps of neighbours that turn a into b. */
function editDistance(a: string, b: string): number {
  let beforeLast: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const cost = a[i - 1] === b[j - 1] ? 0 : 1;
      let least = Math.min((last[j] ?? 0) + 1, (row[j - 1] ?? 0) + 1, (last[j - 1] ?? 0) + cost);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) least = Math.min(least, (beforeLast[j - 2] ?? 0) + 1);
      row.push(least);
    }
    beforeLast = last;
    last = row;
  }
  return last[b.length] ?? 0;
}

/** The name nearest to `name` if a third of its letters or fewer differ; undefined if none is that near. */
export function nearestName(name: string, known: Iterable<string>): string | undefined {
  if (name.length > 100) return undefined;
  let best: { name: string; distance: number } | undefined;
  for (const each of known) {
    if (each.length > 100) continue;
    const distance = editDistance(name, each);
    if (distance <= Math.max(1, Math.floor(name.length / 3)) && (!best || distance < best.distance)) best = { name: each, distance };
  }
  return best?.name;
}
