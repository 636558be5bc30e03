// A rule of thumb becomes a finding: judged on the instruments finished after it was stated, with those before shown beside it.
import { type Caution, type Estimate, type Finding, type Refusal, refusals } from "../base/index.ts";
import type { ColumnTable } from "../columns/index.ts";
import { finding, questionMethods, refused } from "../questions/index.ts";
import type { Judgement, JudgementOutcome } from "./judgement.ts";
import type { ResolvedRule } from "./resolved-rule.ts";
import type { RuleInput } from "./rules/rule-input.ts";
import { ruleKinds } from "./rules/rule-kinds.ts";
import { statedBefore } from "./stated-before.ts";
import { verdictMethods } from "./verdict-methods.ts";
import { verdictSentence } from "./verdict-sentence.ts";

const judge = (rule: ResolvedRule, input: RuleInput): JudgementOutcome =>
  (ruleKinds[rule.claims] as (rule: ResolvedRule, input: RuleInput) => JudgementOutcome)(rule, input);

const reason = (refusal: Refusal): string =>
  (refusals[refusal.code] as (facts: Refusal["facts"]) => string)(refusal.facts);

/** The estimates of the records before, named as such, after those of the test. */
const earlierEstimates = (earlier: Judgement | null): readonly Estimate[] =>
  (earlier?.estimate ?? []).map((each) => ({ ...each, name: `${each.name}, up to the day it was stated` }));

const intervalMethod = {
  id: "stated-before-seen",
  name: "Interval beside the amount that the rule claims",
  source: { citation: "derived: an interval beside the amount claimed", basis: "derived" },
} as const;

/**
 * Judges a rule on the records of a table. With `stated` and a table that says when instruments were finished, only those finished
 * later are the test; the verdict is theirs alone, and the earlier records are shown beside it. Without a date, or without a
 * `finished on` column, all records are used and a caution says that nothing here is a test.
 *
 * `rule.mask` keeps rows with 1. `asked` is the number of questions asked of the table so far, this one included, at least 1: a rule that is not
 * tested on later records is judged as one of so many.
 * Returns a finding of kind "verdict", or a refusal when no record at all can be judged. Never non-finite numbers.
 */
export function judgeRule({
  table,
  rule,
  asked,
}: {
  readonly table: ColumnTable;
  readonly rule: ResolvedRule;
  readonly asked: number;
}): Finding {
  const split = statedBefore(table, rule.stated?.day ?? null, rule.mask);
  // A rule that was there before its records was not picked for what they show, so it is no one of many looks.
  const looks = split.dated ? 1 : asked;
  const test = judge(rule, { table, mask: split.dated ? split.after : split.before, asked: looks });
  const earlier = split.dated ? judge(rule, { table, mask: split.before, asked: looks }) : null;
  if (!test.ok && !earlier?.ok) return refused(test.refusal.code, test.refusal.facts as never);
  const judged = test.ok ? test.value : null;
  const before = earlier?.ok ? earlier.value : null;
  const shown = judged ?? before;
  const cautions: Caution[] = [...(judged?.cautions ?? [])];
  if (rule.stated && (!split.dated || !split.after.includes(1)))
    cautions.push({ code: "stated-after", facts: { stated: rule.stated.text } });
  return finding({
    kind: "verdict",
    table,
    verdict: judged?.verdict ?? "cannot-tell",
    sentence: verdictSentence({
      verdict: judged?.verdict ?? "cannot-tell",
      ruleWords: rule.words,
      test: judged,
      noTest: test.ok ? null : reason(test.refusal),
      earlier: before,
      asked: looks,
      statedText: split.dated ? (rule.stated?.text ?? null) : null,
    }),
    estimate: [...(judged?.estimate ?? []), ...earlierEstimates(before)],
    rows: shown?.rows ?? { used: [], setAside: [] },
    checks: judged?.checks ?? [],
    cautions,
    method: [...questionMethods, ...verdictMethods].find((method) => method.id === shown?.methodId) ?? intervalMethod,
    chosenBecause: split.dated
      ? "a rule is tested on what was finished after it was stated"
      : "every record is used: nothing says which came after the rule",
    columns: shown?.columns ?? [],
  });
}
