// Counts and grades: a paired table by its cells, graders as one list each.
import { columnsOf } from "../stats-case.ts";
import { plainInputs, type StatsAdapters } from "./stats-adapter.ts";

export const countsAdapters: StatsAdapters = {
  mcnemar: {
    inputs: (one) => {
      const { table, ...rest } = plainInputs(one);
      if (!Array.isArray(table)) return { ...rest, ...(table as object) };
      const [[both, onlyA], [onlyB, neither]] = table as [[number, number], [number, number]];
      return { ...rest, both, only_a: onlyA, only_b: onlyB, neither };
    },
  },
  "krippendorff-alpha": { inputs: (one) => ({ ratings: Object.values(columnsOf(one)) }) },
};
