import { daysFromDate } from "../../../../core/columns/index.ts";
import { refused } from "../../../../core/questions/index.ts";
import { judgeRule } from "../../../../core/verdicts/index.ts";
import { answered } from "../../answered.ts";
import { type Computed, computed, failed, type Inputs } from "../../cell.ts";
import { type Answered, cells } from "../../cells.ts";
import { amountsNamed, maskFrom } from "../../evaluated.ts";
import { labelOf } from "../../label-of.ts";
import { columnReader } from "./column-reader.ts";
import { resolvedClaim } from "./resolved-claim.ts";
import { ruleExpressions } from "./rule-expressions.ts";
import type { RuleSpec } from "./rule-spec.ts";

/** Looks up what a rule names and has it judged. */
export function runRule(spec: RuleSpec, inputs: Inputs): Computed<Answered> {
  const [slice, asked] = [inputs.get(cells.slice(spec.key)), inputs.get(cells.askedOf(spec.key))];
  if (!slice.ok || !asked.ok) return failed();
  const { table } = slice.value;
  const anchor = ruleExpressions(spec.rule).find((each) => each !== null);
  const amounts = anchor ? amountsNamed(spec.amounts, anchor, inputs) : computed(new Map());
  if (!amounts.ok) return amounts;
  const reach = { ...slice.value, amounts: amounts.value };
  const read = columnReader(reach);
  const claim = resolvedClaim(spec.rule, read, table);
  const within = spec.rule.within ? read.label(spec.rule.within) : null;
  const mask = spec.rule.where ? maskFrom(spec.rule.where, reach) : null;
  const problems = [...read.problems(), ...(mask && !mask.ok ? mask.problems : [])];
  if (problems.length > 0) return failed(...problems);
  const refusal = read.refusal();
  if (refusal || !claim) {
    const finding = refusal
      ? refused(refusal.code, refusal.facts as never)
      : refused("not-finite", { name: "this rule" });
    return computed({ finding, table, columns: read.columns() });
  }
  const day = spec.rule.stated === null ? Number.NaN : daysFromDate(spec.rule.stated);
  const stated = spec.rule.stated === null || Number.isNaN(day) ? null : { day, text: spec.rule.stated };
  const finding = judgeRule({
    table,
    asked: asked.value,
    rule: { ...claim, words: spec.words, stated, within, mask: mask?.ok ? mask.value : null },
  });
  const [first, second] = read.columns();
  const finished = table.finished === undefined ? undefined : table.columns.get(table.finished);
  if (!first) return computed({ finding, table, columns: [] });
  const [y, x] =
    claim.claims === "moves-with"
      ? [claim.y, claim.x]
      : "y" in claim
        ? [claim.y, "of" in claim ? claim.of : null]
        : "a" in claim
          ? [claim.a, claim.b]
          : [first, second ?? null];
  return computed(
    answered(finding, read.columns(), {
      table,
      y,
      x: x && x !== y ? x : null,
      group: within ?? (claim.claims === "has-more" ? labelOf(claim.groups) : null),
      stated: stated && finished?.kind === "date" ? { days: stated.day, finished: finished.days } : null,
    }),
  );
}
