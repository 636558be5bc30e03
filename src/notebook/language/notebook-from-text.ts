// A notebook file read: front matter, prose and entries in file order, each with its place.
import type { Notebook } from "./notebook.ts";
import { notebookFromOutline } from "./notebook-from-outline.ts";
import { notebookOutline } from "./notebook-outline.ts";

/** A notebook read. text: the file as it is, either line end; file: its path, for the places of problems. Never throws. */
export function notebookFromText(text: string, file: string): Notebook {
  const { frontMatter, ...outline } = notebookOutline(text, file);
  return { ...notebookFromOutline(text, file, outline), frontMatter };
}
