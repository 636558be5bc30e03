// Prose as markup: Markdown's tree written out with every text escaped. Raw HTML in the prose is shown as the text it is.
import type { ProseNode } from "../../core/base/index.ts";
import { markdownTree } from "../language/index.ts";
import { htmlText } from "./html-text.ts";
import { proseNodes } from "./prose-nodes.ts";
import { safeAddress } from "./safe-address.ts";

export type ProseOptions = {
  /** Whether a link to a file of the workspace stays a link. In a copy it leads nowhere, so there it is text. */
  readonly insideLinks?: boolean;
};

type Of<K extends ProseNode["is"]> = ProseNode & { readonly is: K };
type Write<K extends ProseNode["is"]> = (node: Of<K>, options: ProseOptions) => string;

const all = (nodes: readonly ProseNode[], options: ProseOptions): string =>
  nodes.map((node) => written(node, options)).join("");
const element =
  (name: string) =>
  (node: { readonly children: readonly ProseNode[] }, options: ProseOptions): string =>
    `<${name}>${all(node.children, options)}</${name}>`;

function linkHtml(node: Of<"link">, options: ProseOptions): string {
  const address = safeAddress(node.url, options.insideLinks ?? false);
  const words = all(node.children, options);
  return address === null ? words : `<a href="${htmlText(address)}" rel="noopener noreferrer">${words}</a>`;
}

function tableHtml({ rows: [head, ...body] }: Of<"table">, options: ProseOptions): string {
  const heads = (head ?? []).map((cell) => `<th scope="col">${all(cell, options)}</th>`).join("");
  const rows = body.map((row) => `<tr>${row.map((cell) => `<td>${all(cell, options)}</td>`).join("")}</tr>`).join("");
  return `<table>${head ? `<thead><tr>${heads}</tr></thead>` : ""}<tbody>${rows}</tbody></table>`;
}

function listHtml(node: Of<"list">, options: ProseOptions): string {
  const name = node.ordered ? "ol" : "ul";
  return `<${name}${node.ordered && node.start !== 1 ? ` start="${Math.trunc(node.start)}"` : ""}>${all(node.children, options)}</${name}>`;
}

const writers: { readonly [K in ProseNode["is"]]: Write<K> } = {
  text: (node) => htmlText(node.text),
  code: (node) => `<code>${htmlText(node.text)}</code>`,
  "code-block": (node) => `<pre><code>${htmlText(node.text)}</code></pre>`,
  paragraph: element("p"),
  emphasis: element("em"),
  strong: element("strong"),
  quote: element("blockquote"),
  item: element("li"),
  // Headings of the prose stand below the title of the page, which is the first.
  heading: (node, options) => element(`h${Math.min(6, Math.max(2, node.depth))}`)(node, options),
  list: listHtml,
  link: linkHtml,
  table: tableHtml,
  rule: () => "<hr>",
  break: () => "<br>",
};

const written = (node: ProseNode, options: ProseOptions): string =>
  (writers[node.is] as Write<ProseNode["is"]>)(node, options);

/** Markdown as safe HTML: no raw HTML, no script, links only to http, https, mailto and (if asked) the workspace. Images give their words. */
export const proseHtml = (markdown: string, options: ProseOptions = {}): string =>
  all(proseNodes(markdownTree(markdown)), options);
