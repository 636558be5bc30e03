import type { Entry } from "../../../language/index.ts";
import { computed, failed, needs } from "../../cell.ts";
import { cells } from "../../cells.ts";
import { type EntryPlan, onlyProblems } from "../../entry-kind.ts";
import { expressionNames } from "../../expression-names.ts";
import { sourcePlans } from "../../source-plans.ts";
import { sourceTable } from "../../source-table.ts";
import type { Surroundings } from "../../surroundings.ts";
import type { RigSpec } from "./rig-spec.ts";
import { runRig } from "./run-rig.ts";

/** The table of readings under this entry's name, and the check of it. */
export function checkRigEntry(entry: Entry, key: string, around: Surroundings): EntryPlan {
  if (entry.syntax?.kind !== "rig") return onlyProblems();
  const { reading, reference, file, where } = entry.syntax;
  const amounts = expressionNames(where).filter((each) => around.amounts.has(each.name));
  const source = {
    file,
    path: around.pathOf(file),
    sheet: null,
    table: null,
    span: { from: 0, to: entry.body.trimEnd().length },
  };
  const spec: RigSpec = {
    name: entry.name,
    source,
    reading,
    reference,
    where,
    amounts: amounts.map((each) => each.name),
  };
  const tableName = `rig ${entry.name}`;
  const [table, rig, answer] = [cells.table(tableName), cells.rig(entry.name), cells.answer(key)];
  const given = around.given?.get(tableName);
  return {
    problems: [],
    shows: answer,
    cells: [
      ...(around.given ? [] : sourcePlans(source.path, around)),
      {
        cell: table,
        says: entry.name,
        base: 0,
        key: JSON.stringify([source, around.given !== null]),
        needs: around.given ? [] : [needs(cells.reading(source.path))],
        run: (inputs) =>
          around.given
            ? given
              ? computed(given)
              : failed({ code: "missing-file", facts: { file }, span: source.span })
            : sourceTable(source, tableName, inputs),
      },
      {
        cell: rig,
        says: entry.name,
        base: 0,
        key: JSON.stringify(spec),
        needs: [needs(table), ...amounts.map((each) => needs(cells.amount(each.name), each.name, each))],
        run: (inputs) => runRig(spec, inputs),
      },
      {
        cell: answer,
        says: entry.name,
        base: 0,
        key: "answer of rig",
        needs: [needs(rig)],
        run: (inputs) => {
          const state = inputs.get(rig);
          return state.ok
            ? computed({
                finding: state.value.finding,
                table: state.value.input.table,
                columns: [state.value.input.reading, state.value.input.reference],
              })
            : failed();
        },
      },
    ],
  };
}
