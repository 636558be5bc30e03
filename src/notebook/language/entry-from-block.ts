// A fenced block as an entry: its kind and name from the fence, its body as typed syntax.
import { type Problem, type ProblemCode, problem } from "../../core/base/index.ts";
import { nearestName } from "../../core/formula/index.ts";
import { entryKindIds, isEntryKindId } from "./entry-forms.ts";
import type { FencedBlock } from "./fenced-blocks.ts";
import type { Entry } from "./notebook.ts";
import { placeInFile } from "./place-in-file.ts";
import { syntaxFromBody } from "./syntax-from-body.ts";

const NAME = /^[\p{L}\p{N}_][\p{L}\p{M}\p{N}_-]*$/u;

/** Problems told of one entry; where there are more, the first are enough to begin with. */
const MOST_PROBLEMS = 100;

/** The kind a fence's first word means or nearly means; null: the block is prose (code of another kind). */
export function kindOnFence(info: string): { readonly kind: string; readonly suggestion: string | null } | null {
  const [word = "", ...rest] = info.split(/\s+/);
  if (isEntryKindId(word)) return { kind: word, suggestion: null };
  if (word.length < 3 || rest.length > 1 || /[{}=]/.test(info)) return null;
  const near = nearestName(word.toLowerCase(), entryKindIds);
  return near === undefined ? null : { kind: word, suggestion: near };
}

/** The entry of a block. taken: the names above it, to which its own is added; placed: how many of each kind there were. */
export function entryFromBlock(
  text: string,
  file: string,
  block: FencedBlock,
  taken: Set<string>,
  placed: Map<string, number>,
): Entry | null {
  const fence = kindOnFence(block.info);
  if (fence === null) return null;
  const { kind } = fence;
  const written = block.info.slice(kind.length).trim();
  const count = (placed.get(kind) ?? 0) + 1;
  placed.set(kind, count);
  const named = written !== "" && NAME.test(written);
  let name = named ? written : `${kind}-${count}`;
  for (let again = 2; !named && taken.has(name); again++) name = `${kind}-${count}-${again}`;
  const body = text.slice(block.bodyFrom, block.bodyTo);
  const where = { file, line: block.line };
  const lineStart = text.lastIndexOf("\n", block.from) + 1;
  const kindPlace = { ...where, column: block.infoFrom - lineStart + 1, length: Math.max(1, kind.length) };
  const namePlace = {
    ...where,
    column: text.indexOf(written, block.infoFrom + kind.length) - lineStart + 1,
    length: Math.max(1, written.length),
  };
  const problems: Problem[] = [];
  if (written !== "" && !named)
    problems.push(problem("syntax", { found: written, expected: "one word as a name" }, namePlace));
  if (named && kind !== "columns" && taken.has(name)) problems.push(problem("name-taken", { name }, namePlace));
  if (kind !== "columns") taken.add(name);
  if (!block.closed) problems.push(problem("unclosed-fence", { name }, kindPlace));
  const entry = {
    name,
    named,
    kind,
    line: block.line,
    bodyLine: block.bodyLine,
    bodyFrom: block.bodyFrom,
    bodyTo: block.bodyTo,
    body,
  };
  if (!isEntryKindId(kind)) {
    problems.push(problem("unknown-entry-kind", { name: kind }, kindPlace, fence.suggestion ?? undefined));
    return { ...entry, syntax: null, problems };
  }
  const read = syntaxFromBody(kind, body);
  for (const each of read.problems.slice(0, MOST_PROBLEMS))
    problems.push(
      problem<ProblemCode>(each.code, each.facts as never, { file, ...placeInFile(entry, each.span) }, each.suggestion),
    );
  return { ...entry, syntax: read.syntax, problems };
}
