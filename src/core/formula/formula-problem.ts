import type { ProblemCode, problems } from "../base/index.ts";
import type { Span } from "./expression.ts";
import { nearestName } from "./nearest-name.ts";

/** What is wrong in a formula and where, as offsets of the entry's body; whoever knows the file makes the sentence. */
export type FormulaProblem = {
  readonly span: Span;
  readonly code: ProblemCode;
  readonly facts: Readonly<Record<string, string | number>>;
  readonly suggestion?: string;
};

/** A problem whose facts fit its code. */
export const formulaProblem = <C extends ProblemCode>(
  span: Span,
  code: C,
  facts: Parameters<(typeof problems)[C]>[0],
  suggestion?: string,
): FormulaProblem => ({
  span: { from: span.from, to: span.to },
  code,
  facts,
  ...(suggestion === undefined ? {} : { suggestion }),
});

/** The problem of a function that the catalogue lacks, with the nearest name in it. */
export const unknownFunction = (
  { name, nameSpan }: { readonly name: string; readonly nameSpan: Span },
  known: Iterable<string>,
): FormulaProblem => formulaProblem(nameSpan, "unknown-function", { name }, nearestName(name, known));
