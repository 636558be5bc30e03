import { nearestName } from "../../../../core/formula/index.ts";
import type { Entry } from "../../../language/index.ts";
import { type CellPlan, type LocalProblem, needs } from "../../cell.ts";
import { cells, type DialState } from "../../cells.ts";
import { type EntryPlan, onlyProblems } from "../../entry-kind.ts";
import type { Surroundings } from "../../surroundings.ts";
import { runSetting } from "./run-setting.ts";

/** A named position of dials; a dial that is not there is a problem at its name. */
export function checkSetting(entry: Entry, key: string, around: Surroundings): EntryPlan {
  if (entry.syntax?.kind !== "setting") return onlyProblems();
  const problems: LocalProblem[] = [];
  const known = entry.syntax.dials.filter(({ dial }) => {
    if (around.dials.has(dial.name)) return true;
    const suggestion = nearestName(dial.name, around.dials);
    problems.push({
      code: "unknown-name",
      facts: { name: dial.name },
      span: dial,
      ...(suggestion ? { suggestion } : {}),
    });
    return false;
  });
  const plan: CellPlan = {
    cell: cells.setting(key),
    says: entry.name,
    base: 0,
    key: JSON.stringify(known),
    needs: known.map(({ dial }) => needs(cells.dial(dial.name), dial.name, dial)),
    run: (inputs) =>
      runSetting(known, (name) => {
        const state = inputs.get<DialState>(cells.dial(name));
        return state.ok ? state.value : null;
      }),
  };
  return { problems, cells: [plan], shows: cells.setting(key) };
}
