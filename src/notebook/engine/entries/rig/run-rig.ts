import type { DateColumn, LabelColumn } from "../../../../core/columns/index.ts";
import { nearestName } from "../../../../core/formula/index.ts";
import { pictureOf } from "../../../../core/pictures/index.ts";
import { checkRig } from "../../../../core/rig/index.ts";
import { type Computed, computed, failed, type Inputs, type LocalProblem } from "../../cell.ts";
import { cells, type RigState } from "../../cells.ts";
import { amountsNamed, maskFrom } from "../../evaluated.ts";
import { quantityOf } from "../../quantity-of.ts";
import type { RigSpec } from "./rig-spec.ts";

/** Readings beside references of one rig; by the date and the operator where the table has them. */
export function runRig(spec: RigSpec, inputs: Inputs): Computed<RigState> {
  const made = inputs.get(cells.table(`rig ${spec.name}`));
  if (!made.ok) return failed();
  const table = made.value;
  const lacking = [spec.reading, spec.reference].filter((name) => !table.columns.has(name.name));
  if (lacking.length > 0) {
    return failed(
      ...lacking.map((name): LocalProblem => {
        const suggestion = nearestName(name.name, table.columns.keys());
        return {
          code: "unknown-column",
          facts: { name: name.name, table: spec.source.file },
          span: { from: name.from, to: name.to },
          ...(suggestion ? { suggestion } : {}),
        };
      }),
    );
  }
  const amounts = spec.where ? amountsNamed(spec.amounts, spec.where, inputs) : computed(new Map());
  if (!amounts.ok) return amounts;
  const mask = spec.where ? maskFrom(spec.where, { table, formulas: [], amounts: amounts.value }) : null;
  if (mask && !mask.ok) return mask;
  const columns = [spec.reading, spec.reference].flatMap((name) => table.columns.get(name.name) ?? []);
  const [reading, reference] = columns.map(quantityOf);
  if (!reading?.ok || !reference?.ok) {
    const wrong = [reading, reference].find((each) => each && !each.ok);
    const facts = wrong && !wrong.ok ? wrong.refusal.facts : { found: "this", needed: "a quantity" };
    return failed({
      code: "wrong-kind",
      facts: { found: "found" in facts ? String(facts.found) : "", needed: "a quantity" },
      span: spec.reading,
    });
  }
  const all = [...table.columns.values()];
  const date = all.find((column): column is DateColumn => column.kind === "date") ?? null;
  const operator =
    all.find(
      (column): column is LabelColumn => column.kind === "label" && /^(operator|person|who|by)$/.test(column.name),
    ) ?? null;
  const input = {
    table,
    name: spec.name,
    reading: reading.value,
    reference: reference.value,
    date,
    operator,
    mask: mask?.value ?? null,
  };
  const finding = checkRig(input);
  if (finding.kind === "refused") return computed({ finding, input });
  const picture = finding.picture ?? pictureOf(finding, { table, y: reading.value, x: reference.value });
  return computed({ finding: picture ? { ...finding, picture } : finding, input });
}
