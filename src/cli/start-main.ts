// `npm start [-- FOLDER]`: serves a workspace on this machine alone and prints one address.
import { stat } from "node:fs/promises";
import { basename, dirname, resolve } from "node:path";
import { fileURLToPath } from "node:url";
import { createNotebookEngine } from "../notebook/engine/index.ts";
import { datedCopy } from "../notebook/share/index.ts";
import { type SharedCopy, startServer, stopOnSignals } from "../server/index.ts";
import { nodeSurface } from "./node-surface.ts";
import { programProblems } from "./program-problems.ts";
import { drawingOf, emptyDocument, sharingTools } from "./sharing-tools.ts";

const surface = nodeSurface(import.meta.url);

type Wish = {
  readonly file: string;
  readonly text: string;
  readonly date: string;
  readonly without: readonly string[];
};

/** The dated copy that the page asks for, made as the `share` command makes it. */
async function shared(wish: Wish, readFile: (name: string) => Promise<Uint8Array | null>): Promise<SharedCopy> {
  const tools = await sharingTools(surface);
  if (tools === null) throw new Error(programProblems["not-built"]());
  const [folder, name] = [dirname(wish.file), basename(wish.file)];
  const engine = createNotebookEngine({
    readFile: (path) => readFile(folder === "." ? path : `${folder}/${path}`),
    schedule: setImmediate,
    asOf: wish.date,
    version: surface.version,
  });
  engine.update(wish.text, name);
  await engine.settled();
  const { copy, problems } = await datedCopy({
    ...tools,
    result: engine.result(),
    notebookText: wish.text,
    tables: engine.tables(),
    date: wish.date,
    version: surface.version,
    without: wish.without,
  });
  engine.dispose();
  if (copy === null) return { problems };
  return { name: `${basename(name, ".md")}-${wish.date}.html`, html: copy.html };
}

/** Starts the server over a folder. */
export async function startMain(args: readonly string[]): Promise<number> {
  const folder = resolve(args[0] ?? fileURLToPath(new URL("../../notebooks", import.meta.url)));
  if (
    !(await stat(folder).then(
      (found) => found.isDirectory(),
      () => false,
    ))
  ) {
    process.stderr.write(`There is no folder ${folder}.\n`);
    return 2;
  }
  const running = await startServer(folder, {
    version: surface.version,
    appFolder: fileURLToPath(new URL("../app", import.meta.url)),
    draw: drawingOf(emptyDocument()),
    share: shared,
    log: (line) => void process.stderr.write(`${line}\n`),
  });
  stopOnSignals(running);
  process.stdout.write(`${running.url}\n`);
  return 0;
}

process.exitCode = await startMain(process.argv.slice(2));
