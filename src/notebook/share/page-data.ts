// Everything a page needs to show a computed notebook, as plain JSON: results, pictures as drawn, prose as a tree. With it the
// page and the copy need no drawing library, no Markdown reader and no engine.
import type { Drawing, Picture, ProseNode } from "../../core/base/index.ts";
import type { NotebookResult } from "../engine/index.ts";
import { markdownTree, notebookFromText } from "../language/index.ts";
import { pictureInView } from "./picture-in-view.ts";
import type { MarkdownNode } from "./prose-nodes.ts";
import { proseNodes } from "./prose-nodes.ts";

/** One part in reading order, with its place in the text (offsets of an entry are those of its body). */
export type PagePart =
  | { readonly is: "prose"; readonly from: number; readonly to: number; readonly prose: readonly ProseNode[] }
  | {
      readonly is: "entry";
      readonly from: number;
      readonly to: number;
      readonly name: string;
      readonly drawing: Drawing | null;
    };

export type PageData = {
  readonly file: string;
  readonly text: string;
  readonly digest: string;
  readonly result: NotebookResult;
  readonly parts: readonly PagePart[];
};

export type PageInput = Omit<PageData, "parts"> & { readonly draw: (picture: Picture) => Drawing };

/** The page's data for a result. `draw` makes a picture into data. */
export function pageData({ file, text, digest, result, draw }: PageInput): PageData {
  // By place: names alone do not tell `records tops` from `columns tops`.
  const pictures = result.entries.map(({ view }) => pictureInView(view));
  let at = 0;
  const parts = notebookFromText(text, file).parts.map((part): PagePart => {
    if (part.is === "prose")
      return {
        is: "prose",
        from: part.prose.from,
        to: part.prose.to,
        prose: proseNodes(markdownTree(part.prose.text) as MarkdownNode),
      };
    const { name, bodyFrom, bodyTo } = part.entry;
    const picture = pictures[at++];
    return { is: "entry", from: bodyFrom, to: bodyTo, name, drawing: picture === undefined ? null : draw(picture) };
  });
  return { file, text, digest, result, parts };
}
