import type { Finding } from "../../base/index.ts";
import { columnInWords } from "../column-in-words.ts";
import { refused } from "../refused.ts";
import { relationByMethod } from "./relation-by-method.ts";
import type { RelationDesign } from "./relation-design.ts";
import { MOST_GROUPS } from "./relation-design.ts";
import type { RelationInput } from "./relation-input.ts";
import { LINE_METHODS, relationMethods } from "./relation-methods.ts";

/** What is answered in place of a line: what stands in the way of any fit, or the one method that was asked for by name; null when a line may be fitted. */
export function answerWithoutLine(input: RelationInput, design: RelationDesign): Finding | null {
  const have = design.sample.rows.length;
  if (input.by !== null && !LINE_METHODS.includes(input.by)) {
    if (!relationMethods.has(input.by))
      return refused("out-of-domain", {
        name: input.by,
        needed: `one of the methods ${[...LINE_METHODS, ...relationMethods.keys()].join(", ")}`,
      });
    if (have > 0) return relationByMethod(input, design, input.by);
  }
  if (have === 0) return refused("no-records", { table: input.table.name });
  if (design.tooManyGroups)
    return refused("out-of-domain", {
      name: columnInWords(design.tooManyGroups),
      needed: `a label with at most ${MOST_GROUPS} groups`,
    });
  if (design.groups && design.groups.names.length < 2)
    return refused("one-group", {
      column: columnInWords(design.groups.column),
      group: design.groups.names[0] ?? "none",
    });
  const need = Math.max(3, design.columns.length + 1);
  if (have < need) return refused("too-few-records", { have, need });
  for (const [at, x] of design.x.entries())
    if (x.every((value) => value === x[0]))
      return refused("no-spread", { column: columnInWords(input.x[at] ?? input.y) });
  if (design.y.every((value) => value === design.y[0])) return refused("no-spread", { column: columnInWords(input.y) });
  return null;
}
