// Opens a notebook file and has it computed: what report, check, trace and share begin with.
import { basename, dirname, join } from "node:path";
import { limits, problems } from "../core/base/index.ts";
import { createNotebookEngine, type NotebookEngine } from "../notebook/engine/index.ts";
import type { CommandAnswer } from "./command.ts";
import { problemLines } from "./problem-lines.ts";
import type { Surface } from "./surface.ts";

export type OpenedNotebook =
  | { readonly ok: true; readonly engine: NotebookEngine; readonly text: string }
  | { readonly ok: false; readonly answer: CommandAnswer };

/** An answer that is only problems. */
export const problemAnswer = (found: Parameters<typeof problemLines>[0]): CommandAnswer => ({
  code: 1,
  json: { problems: found },
  text: problemLines(found),
});

/** A file that is named but not there. */
export const missingFile = (file: string): CommandAnswer =>
  problemAnswer([{ code: "missing-file", sentence: problems["missing-file"]({ file }), file }]);

/** Reading of a notebook's own files: inside its folder, never outside it. */
const readerBeside =
  (folder: string, surface: Surface) =>
  async (path: string): Promise<Uint8Array | null> =>
    path.startsWith("/") || path.split("/").includes("..") ? null : surface.read(join(folder, path));

/** `placeless`: the result names the notebook without its folder, as a copy does. */
export type Opening = { readonly asOf: string | null; readonly placeless?: true };

/** A notebook, computed; or the answer that says why it cannot be. */
export async function openNotebook(
  file: string,
  surface: Surface,
  opening: Opening = { asOf: null },
): Promise<OpenedNotebook> {
  const bytes = await surface.read(file);
  if (bytes === null) return { ok: false, answer: missingFile(file) };
  if (bytes.length > limits.notebookBytes.value) {
    const facts = {
      what: limits.notebookBytes.words,
      limit: String(limits.notebookBytes.value),
      found: String(bytes.length),
    };
    return { ok: false, answer: problemAnswer([{ code: "limit", sentence: problems.limit(facts), file }]) };
  }
  const text = new TextDecoder().decode(bytes);
  const [folder, name] = [dirname(file), basename(file)];
  const engine = createNotebookEngine({
    readFile: readerBeside(folder, surface),
    schedule: setImmediate,
    version: surface.version,
    asOf: opening.asOf,
    ...(opening.placeless ? {} : { shownAs: file }),
  });
  engine.update(text, name);
  await engine.settled();
  return { ok: true, engine, text };
}
