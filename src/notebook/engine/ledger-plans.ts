// The ledger of questions: how many questions and rules are asked of each table, so that each is judged as one of them.
import { type CellPlan, computed, needs } from "./cell.ts";
import { cells } from "./cells.ts";
import type { Surroundings } from "./surroundings.ts";

/** One cell that counts for all tables; an entry that finds no table counts nowhere. */
export const ledgerPlan = (around: Surroundings): CellPlan => ({
  cell: cells.asked(),
  says: "the ledger",
  base: 0,
  key: `asked ${around.asking.join("|")}`,
  needs: around.asking.map((key) => needs(cells.home(key))),
  run: (inputs) => {
    const counts = new Map<string, number>(around.tables.map((table) => [table, 0]));
    for (const key of around.asking) {
      const home = inputs.get(cells.home(key));
      if (home.ok) counts.set(home.value, (counts.get(home.value) ?? 0) + 1);
    }
    return computed(counts);
  },
});

/** The count for the table of one entry: an answer depends on this number, not on all the others. */
export const ledgerPlans = (key: string): readonly CellPlan[] => [
  {
    cell: cells.askedOf(key),
    says: "the ledger",
    base: 0,
    key: "asked-of",
    needs: [needs(cells.home(key)), needs(cells.asked())],
    run: (inputs) => {
      const [home, asked] = [inputs.get(cells.home(key)), inputs.get(cells.asked())];
      return computed(home.ok && asked.ok ? (asked.value.get(home.value) ?? 1) : 1);
    },
  },
];
