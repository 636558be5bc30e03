// The whole graph of a notebook, before anything runs: every entry's cells, the shared ones, rings found and taken out.
import type { Entry, Notebook } from "../language/index.ts";
import { type CellPlan, computed, failed, type LocalProblem, type Need, waitsFor } from "./cell.ts";
import { cells } from "./cells.ts";
import { entryKinds } from "./entries/entry-kinds.ts";
import { runLexicon } from "./entries/lexicon/run-lexicon.ts";
import type { EntryKind, EntryPlan } from "./entry-kind.ts";
import { ledgerPlan } from "./ledger-plans.ts";
import type { PlanCache } from "./plan-cache.ts";
import { ringsAmong, wayRound } from "./rings-among.ts";
import type { Surroundings } from "./surroundings.ts";

/** One entry with what it adds. `kind` is null for a word on the fence that is no kind. */
export type PlannedEntry = {
  readonly entry: Entry;
  readonly key: string;
  readonly kind: EntryKind | null;
  readonly plan: EntryPlan;
};
export type NotebookPlan = { readonly entries: readonly PlannedEntry[]; readonly cells: ReadonlyMap<string, CellPlan> };

const kindOf = (entry: Entry): EntryKind | null => (entry.syntax ? (entryKinds[entry.syntax.kind] ?? null) : null);

function lexiconPlan(around: Surroundings): CellPlan {
  const families = around.lexicons.flatMap((entry) => (entry.syntax?.kind === "lexicon" ? entry.syntax.families : []));
  return {
    cell: cells.lexicon(),
    says: "the lexicon",
    needs: [],
    base: 0,
    key: JSON.stringify(families),
    run: () => computed(runLexicon(families)),
  };
}

/** Names that two entries of one sort give: the second is not heard, and says so. */
function takenNames(entries: readonly PlannedEntry[]): readonly PlannedEntry[] {
  const taken = new Set<string>();
  return entries.map((planned) => {
    const own: CellPlan[] = [];
    const problems: LocalProblem[] = [...planned.plan.problems];
    for (const plan of planned.plan.cells) {
      const { id } = plan.cell;
      const shared = id.startsWith("bytes:") || id.startsWith("reading:");
      if (taken.has(id) && !shared && !id.startsWith("heads:"))
        problems.push({ code: "name-taken", facts: { name: plan.says }, span: null });
      if (!taken.has(id)) own.push(plan);
      taken.add(id);
    }
    return problems.length === planned.plan.problems.length && own.length === planned.plan.cells.length
      ? planned
      : { ...planned, plan: { ...planned.plan, cells: own, problems } };
  });
}

/** A ring becomes one problem, at its first reference in file order; its other members wait for the next one. */
function withoutRings(all: Map<string, CellPlan>): void {
  const graph = new Map([...all].map(([id, plan]) => [id, plan.needs.map((need) => need.cell.id)]));
  for (const ring of ringsAmong(graph)) {
    const members = new Set(ring);
    const within = (plan: CellPlan): readonly Need[] => plan.needs.filter((need) => members.has(need.cell.id));
    const first =
      [...all.values()].find((plan) => members.has(plan.cell.id) && within(plan).some((need) => need.span !== null)) ??
      all.get(ring[0] ?? "");
    if (!first) continue;
    const way = wayRound(first.cell.id, members, graph)
      .map((id) => all.get(id))
      .filter((plan) => plan?.needs.some((need) => need.span !== null && members.has(need.cell.id)));
    const names = way.map((plan) => plan?.says ?? "");
    const shown =
      names.length > 12 ? [...names.slice(0, 11), `… ${names.length - 12} more …`, names.at(-1) ?? ""] : names;
    const ringWords = [...shown, shown[0] ?? first.says].join(" → ");
    for (const id of ring) {
      const plan = all.get(id);
      if (!plan) continue;
      const need = within(plan).find((each) => each.span !== null) ?? within(plan)[0];
      const trouble: LocalProblem =
        plan === first
          ? { code: "ring", facts: { ring: ringWords }, span: need?.span ?? null }
          : waitsFor(need?.says ?? first.says, need?.span ?? null);
      all.set(id, { ...plan, needs: [], key: `ring ${JSON.stringify(trouble)}`, run: () => failed(trouble) });
    }
  }
}

/** The plan of a notebook in given surroundings. */
export function notebookPlan(
  notebook: Notebook,
  keys: ReadonlyMap<Entry, string>,
  around: Surroundings,
  planOf: PlanCache,
): NotebookPlan {
  const entries = takenNames(
    notebook.entries.map((entry): PlannedEntry => {
      const [kind, key] = [kindOf(entry), keys.get(entry) ?? entry.name];
      return {
        entry,
        key,
        kind,
        plan: kind ? planOf(kind, entry, key, around) : { cells: [], problems: [], shows: null },
      };
    }),
  );
  const all = new Map<string, CellPlan>();
  for (const { plan } of entries) for (const cell of plan.cells) all.set(cell.cell.id, cell);
  for (const shared of [ledgerPlan(around), lexiconPlan(around)]) all.set(shared.cell.id, shared);
  withoutRings(all);
  return { entries, cells: all };
}

/** Needs of a cell that are cells of the plan; another is answered as something it waits for. */
export const knownNeeds = (plan: CellPlan, all: ReadonlyMap<string, CellPlan>): readonly Need[] =>
  plan.needs.filter((need) => all.has(need.cell.id));
