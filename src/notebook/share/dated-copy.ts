// Makes a dated copy: one HTML file with the answers, the records they rest on, and a digest of every byte.
import type { Drawing, View } from "../../core/base/index.ts";
import type { ColumnTable } from "../../core/columns/index.ts";
import type { NotebookResult } from "../engine/index.ts";
import { notebookOutline } from "../language/index.ts";
import type { Digest } from "./copy-digest.ts";
import type { WrittenCopy } from "./copy-from-embedded.ts";
import { copyFromEmbedded } from "./copy-from-embedded.ts";
import type { CopyLooks } from "./copy-html.ts";
import type { CopyProblem } from "./copy-problems.ts";
import { copyProblem } from "./copy-problems.ts";
import { pictureDrawing } from "./draw-picture.ts";
import type { EmbeddedCopy } from "./embedded-copy.ts";
import { embeddedTable } from "./embedded-table.ts";
import { proseHtml } from "./prose-html.ts";
import type { ReaderScripts } from "./reader-scripts.ts";
import { statedResult } from "./stated-result.ts";
import { withheldColumns } from "./withheld-columns.ts";

export type DatedCopyInput = {
  readonly result: NotebookResult;
  readonly notebookText: string;
  /** The notebook's tables as the answers saw them, formula columns included. */
  readonly tables: ReadonlyMap<string, ColumnTable>;
  /** Year-month-day. */
  readonly date: string;
  readonly version: string;
  readonly dials?: ReadonlyMap<string, number>;
  readonly readerScripts: ReaderScripts;
  readonly readerStyle: string;
  /** `drawing`: the view's picture as drawn; null where it has none. */
  readonly renderView: (view: View, drawing: Drawing | null) => string;
  readonly renderProse?: (markdown: string) => string;
  readonly document: Document;
  /** Names of columns to hold back. */
  readonly without: readonly string[];
  readonly digest: Digest;
  /** Answers the notebook again from a copy's own text and tables, as verifying will. Needed where columns are held back; given, it is always used. */
  readonly compute?: (copy: EmbeddedCopy) => Promise<NotebookResult>;
};

export type Sharing = {
  readonly copy: WrittenCopy | null;
  readonly problems: readonly CopyProblem[];
  readonly warnings: readonly CopyProblem[];
};

const isDate = (text: string): boolean => {
  const day = new Date(`${text}T00:00:00Z`);
  return /^\d{4}-\d{2}-\d{2}$/.test(text) && !Number.isNaN(day.getTime()) && day.toISOString().startsWith(text);
};

/** How a copy is shown: views by the page's own components, prose and pictures by this room. */
export const copyLooks = (
  input: Pick<DatedCopyInput, "renderView" | "renderProse" | "document" | "readerScripts" | "readerStyle">,
): CopyLooks => ({
  renderView: input.renderView,
  renderProse: input.renderProse ?? ((markdown) => proseHtml(markdown)),
  drawPicture: (picture) => pictureDrawing(picture, input.document),
  readerScripts: input.readerScripts,
  readerStyle: input.readerStyle,
});

/** The result without where it was computed: only the notebook's own name, no folder. */
const placeless = (result: NotebookResult): NotebookResult => ({
  ...result,
  notebook: result.notebook.slice(Math.max(result.notebook.lastIndexOf("/"), result.notebook.lastIndexOf("\\")) + 1),
});

/** The dated copy of a notebook. Same input, version and date: same bytes. Nothing of folder, clock or user stands in it. */
export async function datedCopy(input: DatedCopyInput): Promise<Sharing> {
  if (!isDate(input.date))
    return { copy: null, problems: [copyProblem("bad-date", { date: input.date })], warnings: [] };
  const kept = withheldColumns({
    notebookText: input.notebookText,
    file: input.result.notebook,
    tables: input.tables,
    without: input.without,
  });
  if (kept.problems.length > 0) return { copy: null, problems: kept.problems, warnings: kept.warnings };
  const given = placeless(input.result);
  const { frontMatter: _frontMatter, ...outline } = notebookOutline(kept.notebookText, given.notebook);
  const draft: EmbeddedCopy = {
    format: "thumbrule-dated-copy",
    formatVersion: 1,
    date: input.date,
    version: input.version,
    notebookText: kept.notebookText,
    outline,
    dials: [...(input.dials ?? [])].map(([name, value]) => ({ name, value })),
    withheld: kept.withheld,
    tables: [...kept.tables.values()].map(embeddedTable),
    result: statedResult(given),
  };
  const recomputed = input.compute ? placeless(await input.compute(draft)) : kept.withheld === 0 ? given : null;
  if (recomputed === null)
    return {
      copy: null,
      problems: [copyProblem("cannot-recompute", { reason: "nothing was given to compute with" })],
      warnings: [],
    };
  return {
    copy: await copyFromEmbedded(
      { ...draft, result: statedResult(recomputed) },
      recomputed,
      copyLooks(input),
      input.digest,
    ),
    problems: [],
    warnings: kept.warnings,
  };
}
