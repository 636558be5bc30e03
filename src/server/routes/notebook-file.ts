// The text of a notebook file, or the answer that says why there is none.
import { serviceProblem } from "../../core/base/index.ts";
import { fileEndings } from "../workspace/file-endings.ts";
import { safePath } from "../workspace/safe-path.ts";
import type { Workspace } from "../workspace/workspace.ts";
import { refuse } from "./request-parts.ts";

export type NotebookFile =
  | { readonly ok: true; readonly file: string; readonly text: string }
  | { readonly ok: false; readonly answer: Response };

/** Decodes bytes exactly: a byte order mark stays, bytes that are no UTF-8 give null. */
export function exactText(bytes: Uint8Array): string | null {
  try {
    return new TextDecoder("utf-8", { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    return null;
  }
}

/** Reads a notebook by the name given in a request. */
export async function notebookFile(workspace: Workspace, name: string | undefined): Promise<NotebookFile> {
  const file = name === undefined ? null : safePath(name, fileEndings.writable);
  if (file === null) return { ok: false, answer: refuse(404, serviceProblem("file-name-refused", {})) };
  const bytes = await workspace.read(file);
  if (bytes === null) return { ok: false, answer: refuse(404, serviceProblem("file-missing", { file })) };
  const text = exactText(bytes);
  return text === null
    ? { ok: false, answer: refuse(422, serviceProblem("file-not-text", { file })) }
    : { ok: true, file, text };
}
