import type { Column } from "./column.ts";
import { meanFormula, spreadSource } from "./mean-formula.ts";

/** A column under the names of another table: its own, and of a mean of readings those that it rests on and whose errors it carries. */
export function renamedColumn(column: Column, names: ReadonlyMap<string, string>): Column {
  const renamed = (name: string): string => names.get(name) ?? name;
  const own = { ...column, name: renamed(column.name) };
  if (own.origin.from !== "formula") return own;
  const parents = own.origin.parents.map(renamed);
  const formula = meanFormula(parents);
  const origin = { ...own.origin, formula, parents, roots: own.origin.roots.map(renamed).sort() };
  if (own.kind !== "quantity" || !own.contributions) return { ...own, origin };
  const spread = spreadSource(own.origin.formula);
  const contributions = new Map(
    [...own.contributions].map(([source, part]) => [source === spread ? spreadSource(formula) : renamed(source), part]),
  );
  return { ...own, origin, contributions };
}
