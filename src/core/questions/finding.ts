import type {
  Answer,
  AnswerKind,
  Caution,
  CautionCode,
  Check,
  Estimate,
  Finding,
  Method,
  MethodUse,
  RowRef,
  SetAside,
  Verdict,
} from "../base/index.ts";
import { cautions as catalogue, stated } from "../base/index.ts";
import type { Column, ColumnTable } from "../columns/index.ts";
import { amongQuestions } from "./among-questions.ts";
import { refused } from "./refused.ts";
import { traceOfAnswer } from "./trace-of-answer.ts";

/** What a finding is made of. `columns`: those that the answer rests on, for the trace. `verdict`: for kind "verdict" only. */
export type FindingParts = {
  readonly kind: AnswerKind;
  readonly verdict?: Verdict;
  readonly table: ColumnTable;
  readonly sentence: string;
  readonly estimate: readonly Estimate[];
  readonly rows: { readonly used: readonly RowRef[]; readonly setAside: readonly SetAside[] };
  readonly checks?: readonly Check[];
  readonly cautions?: readonly Caution[];
  readonly method: Pick<Method, "id" | "name" | "source">;
  readonly chosenBecause: string;
  readonly columns: readonly Column[];
  readonly seed?: number;
  /** Estimates whose direction the sentence may claim, and as one of how many questions of these records; an answer that claims none has neither. */
  readonly claims?: readonly Estimate[];
  readonly asked?: number;
};

const gravity = new Map(Object.keys(catalogue).map((code, at) => [code as CautionCode, at]));

/** Every number of an estimate that is not finite has a name: this is the first of them, or null. */
const notFinite = (estimates: readonly Estimate[]): string | null => {
  for (const { name, value, low, high, standardError, degreesOfFreedom } of estimates)
    if (![value, low, high, standardError ?? 0, degreesOfFreedom ?? 0].every(Number.isFinite)) return name;
  return null;
};

/**
 * The one builder of findings: refuses estimates that are not finite, gives each caution its sentence and sorts them by gravity (each
 * caution once), attaches the trace. Checks that are not finite are left out: they could not be run.
 */
export function finding(parts: FindingParts): Finding {
  const bad = notFinite(parts.estimate);
  if (bad !== null) return refused("not-finite", { name: bad });
  const method: MethodUse = {
    id: parts.method.id,
    name: parts.method.name,
    source: parts.method.source,
    chosenBecause: parts.chosenBecause,
  };
  const seen = new Set<string>();
  const cautions = [...(parts.cautions ?? [])]
    .filter((caution) => {
      const key = JSON.stringify(caution);
      return !seen.has(key) && seen.add(key);
    })
    .sort((a, b) => (gravity.get(a.code) ?? 0) - (gravity.get(b.code) ?? 0))
    .map(stated);
  const among = amongQuestions(parts.claims ?? [], parts.asked ?? 1);
  const answer = {
    sentence: `${parts.sentence}${among.sentence}`,
    estimate: parts.estimate,
    rows: parts.rows,
    checks: [...(parts.checks ?? []), ...among.checks].filter((check) => Number.isFinite(check.value)),
    cautions,
    method,
    ...(parts.seed === undefined ? {} : { seed: parts.seed }),
    trace: traceOfAnswer(parts.table, parts.estimate, method, parts.columns, parts.rows.used),
  };
  return (
    parts.kind === "verdict"
      ? { kind: "verdict", verdict: parts.verdict ?? "cannot-tell", ...answer }
      : { kind: parts.kind, ...answer }
  ) as Answer;
}
