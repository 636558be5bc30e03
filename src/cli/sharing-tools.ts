// What making and verifying a dated copy need of the built program: the reader, the page's components, a document, a digest.
import { createHash } from "node:crypto";
import { parseHTML } from "linkedom";
import type { Drawing, Picture, View } from "../core/base/index.ts";
import { createNotebookEngine, type NotebookResult } from "../notebook/engine/index.ts";
import {
  columnTableFromEmbedded,
  drawingOfElement,
  drawPicture,
  type EmbeddedCopy,
  type ReaderScripts,
} from "../notebook/share/index.ts";
import type { Surface } from "./surface.ts";

export type SharingTools = {
  readonly readerScripts: ReaderScripts;
  readonly readerStyle: string;
  readonly renderView: (view: View, drawing: Drawing | null) => string;
  readonly document: Document;
  readonly digest: (bytes: Uint8Array) => Promise<string>;
  readonly compute: (copy: EmbeddedCopy) => Promise<NotebookResult>;
};

/** A document for pictures, with nothing in it. */
export const emptyDocument = (): Document =>
  parseHTML("<!doctype html><html><body></body></html>").document as unknown as Document;

/** A picture as plain data. */
export const drawingOf =
  (document: Document) =>
  (picture: Picture): Drawing =>
    drawingOfElement(drawPicture(picture, document));

/** SHA-256 in hexadecimal. */
export const sha256 = async (bytes: Uint8Array): Promise<string> => createHash("sha256").update(bytes).digest("hex");

/** A copy's notebook answered again from its own text, tables and dials. */
export const recomputed =
  (version: string) =>
  async (copy: EmbeddedCopy): Promise<NotebookResult> => {
    const tables = new Map(copy.tables.map((table) => [table.name, columnTableFromEmbedded(table)]));
    const engine = createNotebookEngine({
      readFile: async () => null,
      schedule: setImmediate,
      asOf: copy.result.asOf,
      version,
      tables,
    });
    for (const { name, value } of copy.dials) engine.setDial(name, value);
    engine.update(copy.notebookText, copy.result.notebook);
    await engine.settled();
    const result = engine.result();
    engine.dispose();
    return result;
  };

/** The tools out of the built program; null when it has not been built. */
export async function sharingTools(surface: Surface): Promise<SharingTools | null> {
  const [still, turning, drawing, readerStyle, staticView] = await Promise.all([
    surface.built("reader/reader.js"),
    surface.built("reader/turning-reader.js"),
    surface.built("reader/drawing-reader.js"),
    surface.built("reader/reader.css"),
    surface.staticView(),
  ]);
  if (still === null || turning === null || drawing === null || readerStyle === null || staticView === null)
    return null;
  const document = emptyDocument();
  return {
    readerScripts: { still, turning, drawing },
    readerStyle,
    document,
    digest: sha256,
    compute: recomputed(surface.version),
    renderView: staticView,
  };
}
