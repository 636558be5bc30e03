// Verifies a dated copy: no byte has changed, and its own records give its numbers. Only our code runs, none out of the file.
import type { NotebookResult } from "../engine/index.ts";
import { notebookOutline } from "../language/index.ts";
import type { Digest } from "./copy-digest.ts";
import { copyDigest, DIGEST_MARK } from "./copy-digest.ts";
import { copyFromBytes } from "./copy-from-bytes.ts";
import type { CopyProblem } from "./copy-problems.ts";
import { copyProblem, notShown } from "./copy-problems.ts";
import { differenceBetween } from "./difference-between.ts";
import type { EmbeddedCopy } from "./embedded-copy.ts";
import { type StatedResult, statedResult } from "./stated-result.ts";

export type VerifyTools = {
  readonly digest: Digest;
  /** Answers the copy's notebook again from its text, tables and dials. */
  readonly compute: (copy: EmbeddedCopy) => Promise<NotebookResult>;
  /** This program's version. */
  readonly version?: string;
  /** Writes the copy's file again from its data and what they gave; where versions agree it must come out byte for byte. */
  readonly rebuild?: (copy: EmbeddedCopy, result: NotebookResult) => Promise<string>;
};

export type Verification = {
  readonly ok: boolean;
  readonly problems: readonly CopyProblem[];
  /** Remarks that do not spoil the copy: another version. */
  readonly notes: readonly CopyProblem[];
  readonly notShown: readonly string[];
  readonly date?: string;
  readonly version?: string;
};

const MOST_LISTED = 50;
/** Different engines may differ in the last bits of a logarithm; a changed figure differs by far more. */
const RELATIVE = 1e-9;

function differences(stated: StatedResult, recomputed: StatedResult, texts: boolean): readonly CopyProblem[] {
  const entries = stated.entries.flatMap((entry, at) =>
    differenceBetween(entry, recomputed.entries[at], { relative: RELATIVE, texts }).map((difference) =>
      copyProblem("different", {
        entry: entry.name,
        what: difference.at === "" ? "the entry" : difference.at,
        stated: difference.before,
        recomputed: difference.after,
      }),
    ),
  );
  const rest = differenceBetween(
    { ...stated, entries: stated.entries.map((entry) => entry.name), notebook: "", version: "" },
    { ...recomputed, entries: recomputed.entries.map((entry) => entry.name), notebook: "", version: "" },
    { relative: RELATIVE, texts },
  );
  return [
    ...entries,
    ...rest.map((difference) =>
      copyProblem("different", {
        entry: "the notebook",
        what: difference.at,
        stated: difference.before,
        recomputed: difference.after,
      }),
    ),
  ].slice(0, MOST_LISTED);
}

/** The digest's own line always differs then, and says nothing of where. */
function firstDifferentLine(made: string, rebuilt: string): number {
  const [a, b] = [made.split("\n"), rebuilt.split("\n")];
  return (
    1 +
    Math.max(
      0,
      a.findIndex((line, index) => line !== b[index] && !line.startsWith(DIGEST_MARK)),
    )
  );
}

/** The outline only spares the copy a Markdown reader; it must be the one that its text has. */
function outlineDifferences({ notebookText, result, outline }: EmbeddedCopy): readonly CopyProblem[] {
  const { frontMatter: _frontMatter, ...own } = notebookOutline(notebookText, result.notebook);
  return differenceBetween(outline, own, { relative: 0, texts: true }).map(({ at, before, after }) =>
    copyProblem("different", {
      entry: "the notebook",
      what: `outline.${at}`,
      stated: before,
      recomputed: after,
    }),
  );
}

type Recomputed = { readonly result: NotebookResult | null; readonly problems: readonly CopyProblem[] };

async function recompute(copy: EmbeddedCopy, tools: VerifyTools, same: boolean): Promise<Recomputed> {
  try {
    const result = await tools.compute(copy);
    const found = differences(copy.result, statedResult(result), same);
    return { result, problems: same ? [...found, ...outlineDifferences(copy)].slice(0, MOST_LISTED) : found };
  } catch (failure) {
    const reason = failure instanceof Error ? failure.message : "unknown";
    return { result: null, problems: [copyProblem("cannot-recompute", { reason })] };
  }
}

async function rebuildProblems(
  text: string,
  copy: EmbeddedCopy,
  result: NotebookResult | null,
  tools: VerifyTools,
): Promise<readonly CopyProblem[]> {
  if (!tools.rebuild || result === null) return [];
  const rebuilt = await tools.rebuild(copy, result);
  return rebuilt === text ? [] : [copyProblem("differs-from-rebuilt", { line: firstDifferentLine(text, rebuilt) })];
}

/** Whether a file is an unchanged dated copy whose numbers come out again. Any one byte changed, added or missing: not ok. */
export async function verifyCopy(bytes: Uint8Array, tools: VerifyTools): Promise<Verification> {
  const answer = (
    problems: readonly CopyProblem[],
    copy: EmbeddedCopy | null,
    notes: readonly CopyProblem[] = [],
  ): Verification => ({
    ok: problems.length === 0,
    problems,
    notes,
    notShown,
    ...(copy === null ? {} : { date: copy.date, version: copy.version }),
  });
  const read = copyFromBytes(bytes);
  const found = read.problems.some((problem) => problem.code === "too-large") ? null : copyDigest(bytes);
  const changed = found === null || (await tools.digest(found.blanked)) !== found.stated;
  if (read.copy === null)
    return answer([...read.problems, ...(changed && found !== null ? [copyProblem("changed", {})] : [])], null);
  const copy = read.copy;
  const same = tools.version === undefined || tools.version === copy.version;
  const notes = same ? [] : [copyProblem("other-version", { made: copy.version, here: tools.version ?? "" })];
  const recomputed = await recompute(copy, tools, same);
  const problems = [
    ...(found === null ? [copyProblem("not-a-copy", {})] : changed ? [copyProblem("changed", {})] : []),
    ...recomputed.problems,
  ];
  const rebuilt =
    same && problems.length === 0
      ? await rebuildProblems(new TextDecoder().decode(bytes), copy, recomputed.result, tools)
      : [];
  return answer([...problems, ...rebuilt], copy, notes);
}
