// The engine of a copy: answers from what the copy carries, with no file, no Markdown and no YAML to read.
import { type NotebookEngine, notebookEngine } from "../engine/index.ts";
import { notebookFromOutline } from "../language/index.ts";
import type { EmbeddedCopy } from "./embedded-copy.ts";
import { columnTableFromEmbedded } from "./embedded-table.ts";

/** An engine over a copy's own text, tables and dials, computing as soon as it is made. */
export function engineOfCopy(copy: EmbeddedCopy): NotebookEngine {
  const engine = notebookEngine(
    {
      readFile: () => Promise.resolve(null),
      asOf: copy.result.asOf,
      version: copy.version,
      tables: new Map(copy.tables.map((table) => [table.name, columnTableFromEmbedded(table)])),
    },
    { notebookFromText: (text, path) => notebookFromOutline(text, path, copy.outline), tables: null },
  );
  for (const { name, value } of copy.dials) engine.setDial(name, value);
  engine.update(copy.notebookText, copy.result.notebook);
  return engine;
}
