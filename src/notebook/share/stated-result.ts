// What a copy states of its answers as data: each number once. Pictures, traces and views follow from these and from the records in the
// copy; they stand drawn in its page, and verifying makes them again and compares them byte for byte.
import type { Answer, Finding } from "../../core/base/index.ts";
import type { EntryResult, NotebookResult } from "../engine/index.ts";

type Refusal = Exclude<Finding, Answer>;
export type StatedFinding = Omit<Answer, "picture" | "trace"> | Refusal;
export type StatedEntry = Omit<EntryResult, "view" | "finding"> & { readonly finding?: StatedFinding };
export type StatedResult = Omit<NotebookResult, "parts" | "entries"> & { readonly entries: readonly StatedEntry[] };

function statedFinding(finding: Finding): StatedFinding {
  if (finding.kind === "refused") return finding;
  const { picture: _picture, trace: _trace, ...stated } = finding;
  return stated;
}

/** The result as a copy states it. */
export function statedResult(result: NotebookResult): StatedResult {
  const { parts: _parts, ...rest } = result;
  return {
    ...rest,
    entries: result.entries.map(({ view: _view, finding, ...entry }) => ({
      ...entry,
      ...(finding === undefined ? {} : { finding: statedFinding(finding) }),
    })),
  };
}
