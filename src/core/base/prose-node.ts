/** Prose as a tree of plain data: what Markdown means, without Markdown and without markup. Links are checked before they get here. */
export type ProseNode =
  | { readonly is: "text" | "code" | "code-block"; readonly text: string }
  | { readonly is: "paragraph" | "emphasis" | "strong" | "quote" | "item"; readonly children: readonly ProseNode[] }
  | { readonly is: "heading"; readonly depth: number; readonly children: readonly ProseNode[] }
  | { readonly is: "list"; readonly ordered: boolean; readonly start: number; readonly children: readonly ProseNode[] }
  | { readonly is: "link"; readonly url: string; readonly children: readonly ProseNode[] }
  | { readonly is: "table"; readonly rows: readonly (readonly (readonly ProseNode[])[])[] }
  | { readonly is: "rule" | "break" };
