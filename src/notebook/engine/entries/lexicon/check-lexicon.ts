import type { Entry } from "../../../language/index.ts";
import { cells } from "../../cells.ts";
import { type EntryPlan, onlyProblems } from "../../entry-kind.ts";

/** Families of words; all lexicons of a notebook are one, made in one cell by the plan of the notebook. */
export const checkLexicon = (entry: Entry): EntryPlan =>
  entry.syntax?.kind === "lexicon" ? { cells: [], problems: [], shows: cells.lexicon() } : onlyProblems();
