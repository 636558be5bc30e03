// One more answer laid over those that hold.
import type { ImportAnswers, ImportChoice } from "../../core/records/index.ts";

type Aliases = NonNullable<ImportAnswers["read"]["aliases"]>;

/** Aliases of both; what an earlier one led to is led on by a later one, so that no spelling stops half way. */
function joined(before: Aliases, later: Aliases): Aliases {
  const columns = new Map(Object.entries(before).map(([column, names]) => [column, new Map(Object.entries(names))]));
  for (const [column, names] of Object.entries(later)) {
    const all = columns.get(column) ?? new Map<string, string>();
    const next = new Map(Object.entries(names));
    for (const [spelling, name] of all) all.set(spelling, next.get(name) ?? name);
    for (const [spelling, name] of next) all.set(spelling, name);
    columns.set(column, all);
  }
  return Object.fromEntries([...columns].map(([column, names]) => [column, Object.fromEntries(names)]));
}

/** The answers with those of a choice; nothing else is taken back. */
export function withAnswer({ read, about }: ImportAnswers, { answers }: ImportChoice): ImportAnswers {
  const aliases = joined(read.aliases ?? {}, answers.read?.aliases ?? {});
  return {
    read: { ...read, ...answers.read, ...(Object.keys(aliases).length > 0 ? { aliases } : {}) },
    about: { ...about, ...answers.about },
  };
}
