// Markdown's tree as the closed set of nodes that the page shows. Raw markup stays text; a link that could run or leave is only its words.
import type { ProseNode } from "../../core/base/index.ts";
import { safeAddress } from "./safe-address.ts";

/** What we read of a Markdown tree. */
export type MarkdownNode = {
  readonly type: string;
  readonly value?: string | undefined;
  readonly url?: string | undefined;
  readonly alt?: string | null | undefined;
  readonly depth?: number | undefined;
  readonly ordered?: boolean | null | undefined;
  readonly start?: number | null | undefined;
  readonly children?: readonly MarkdownNode[] | undefined;
};

const DEEPEST = 100;

type Make = (node: MarkdownNode, inside: () => readonly ProseNode[]) => readonly ProseNode[];
const holding =
  (is: "paragraph" | "emphasis" | "strong" | "quote" | "item"): Make =>
  (_, inside) => [{ is, children: inside() }];
const text = (value: string): readonly ProseNode[] => (value === "" ? [] : [{ is: "text", text: value }]);

const MAKE: ReadonlyMap<string, Make> = new Map<string, Make>([
  ["text", (node) => text(node.value ?? "")],
  ["html", (node) => text(node.value ?? "")],
  ["inlineCode", (node) => [{ is: "code", text: node.value ?? "" }]],
  ["code", (node) => [{ is: "code-block", text: node.value ?? "" }]],
  ["paragraph", holding("paragraph")],
  ["emphasis", holding("emphasis")],
  ["strong", holding("strong")],
  ["blockquote", holding("quote")],
  ["listItem", holding("item")],
  ["heading", (node, inside) => [{ is: "heading", depth: node.depth ?? 1, children: inside() }]],
  [
    "list",
    (node, inside) => [{ is: "list", ordered: node.ordered === true, start: node.start ?? 1, children: inside() }],
  ],
  [
    "link",
    (node, inside) => {
      const url = safeAddress(node.url ?? "", true);
      return url === null ? inside() : [{ is: "link", url, children: inside() }];
    },
  ],
  ["image", (node) => text(node.alt ?? "")],
  ["thematicBreak", () => [{ is: "rule" }]],
  ["break", () => [{ is: "break" }]],
  ["definition", () => []],
  [
    "table",
    (node) => [
      {
        is: "table",
        rows: (node.children ?? []).map((row) => (row.children ?? []).map((cell) => proseNodes(cell, 1))),
      },
    ],
  ],
]);

/** The nodes that a Markdown tree holds. Kinds that are not known show what is inside them; deeper than a hundred is left out. */
export function proseNodes(tree: MarkdownNode, depth = 0): readonly ProseNode[] {
  if (depth > DEEPEST) return [];
  return (tree.children ?? []).flatMap((child) => {
    const inside = () => proseNodes(child, depth + 1);
    return MAKE.get(child.type)?.(child, inside) ?? inside();
  });
}
