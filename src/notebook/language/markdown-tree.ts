// Prose read as a Markdown tree (CommonMark with tables), for who writes it out. Nothing in it is run or fetched.
import type { Root } from "mdast";
import { fromMarkdown } from "mdast-util-from-markdown";
import { gfmTableFromMarkdown } from "mdast-util-gfm-table";
import { gfmTable } from "micromark-extension-gfm-table";

/** The tree of a stretch of prose. Raw HTML stays a node of its own, whose value is text to whoever shows it. */
export const markdownTree = (text: string): Root =>
  fromMarkdown(text, { extensions: [gfmTable()], mdastExtensions: [gfmTableFromMarkdown()] });
