// The plan of an entry from last time, as long as its text and the names around it are the same.
import type { Entry } from "../language/index.ts";
import type { EntryKind, EntryPlan } from "./entry-kind.ts";
import type { Surroundings } from "./surroundings.ts";

/** Plans an entry, or hands on the last plan. Owned by one engine. */
export type PlanCache = (kind: EntryKind, entry: Entry, key: string, around: Surroundings) => EntryPlan;

/** Everything of the surroundings that a plan may depend on, as one text. */
const signatureOf = (around: Surroundings): string =>
  JSON.stringify([
    around.tables,
    [...around.formulas].map(([table, names]) => [table, ...names]),
    [...around.amounts.keys()],
    [...around.rigs],
    [...around.dialStands],
    around.changes,
  ]);

/** An empty cache. */
export function planCache(): PlanCache {
  const kept = new Map<string, { readonly body: string; readonly name: string; readonly plan: EntryPlan }>();
  let [last, signature]: [Surroundings | null, string] = [null, ""];
  return (kind, entry, key, around) => {
    if (around !== last) {
      const now = signatureOf(around);
      if (now !== signature) kept.clear();
      [last, signature] = [around, now];
    }
    const known = kept.get(key);
    if (known && known.body === entry.body && known.name === entry.name) return known.plan;
    const plan = kind.check(entry, key, around);
    kept.set(key, { body: entry.body, name: entry.name, plan });
    return plan;
  };
}
