// Prose as markup: a Markdown tree written out with every text escaped. Raw HTML in the prose is shown as the text it is.
import { markdownTree } from "../language/index.ts";
import { htmlText } from "./html-text.ts";

/** The parts of a Markdown tree that are read here; what a node lacks is undefined. */
type Node = {
  readonly type: string;
  readonly value?: string;
  readonly depth?: number;
  readonly ordered?: boolean | null;
  readonly start?: number | null;
  readonly url?: string;
  readonly alt?: string | null;
  readonly align?: readonly (string | null)[] | null;
  readonly children?: readonly Node[];
};

export type ProseOptions = {
  /** Whether a link to a file of the workspace stays a link. In a copy it leads nowhere, so there it is text. */
  readonly insideLinks?: boolean;
};

const DEEPEST = 100;
const OUTSIDE = /^(?:https?|mailto):/i;
const ANY_SCHEME = /^[^/?#]*:/;

/** The address where a link may lead there, else null: http, https, mailto, or inside the workspace. */
export function safeAddress(address: string, insideLinks: boolean): string | null {
  const bare = Array.from(address).filter((character) => character > " " && character !== "\u007f").join("");
  if (bare !== address.trim()) return null;
  if (OUTSIDE.test(bare)) return bare;
  return insideLinks && bare !== "" && !ANY_SCHEME.test(bare) && !/^[/\\]/.test(bare) && !bare.includes("\\") ? bare : null;
}

type Write = (node: Node, options: ProseOptions, depth: number) => string;

const inside: Write = (node, options, depth) => (depth >= DEEPEST ? "" : (node.children ?? []).map((child) => written(child, options, depth + 1)).join(""));
const element = (name: string): Write => (node, options, depth) => `<${name}>${inside(node, options, depth)}</${name}>`;
const asText: Write = (node) => htmlText(node.value ?? "");

const link: Write = (node, options, depth) => {
  const address = safeAddress(node.url ?? "", options.insideLinks ?? false);
  const words = inside(node, options, depth);
  return address === null ? words : `<a href="${htmlText(address)}" rel="noopener noreferrer">${words}</a>`;
};

const table: Write = (node, options, depth) => {
  const rows = node.children ?? [];
  const cells = (row: Node, name: string) => (row.children ?? []).map((cell) => `<${name}${name === "th" ? ' scope="col"' : ""}>${inside(cell, options, depth + 2)}</${name}>`).join("");
  const [head, ...body] = rows;
  return `<table>${head ? `<thead><tr>${cells(head, "th")}</tr></thead>` : ""}<tbody>${body.map((row) => `<tr>${cells(row, "td")}</tr>`).join("")}</tbody></table>`;
};

/** Headings of the prose stand below the title of the page, which is the first. */
const heading: Write = (node, options, depth) => {
  const level = Math.min(6, Math.max(2, node.depth ?? 2));
  return `<h${level}>${inside(node, options, depth)}</h${level}>`;
};

const list: Write = (node, options, depth) => {
  const start = node.ordered && node.start !== null && node.start !== undefined && node.start !== 1 ? ` start="${Math.trunc(node.start)}"` : "";
  const name = node.ordered ? "ol" : "ul";
  return `<${name}${start}>${inside(node, options, depth)}</${name}>`;
};

const writers: ReadonlyMap<string, Write> = new Map<string, Write>([
  ["root", inside],
  ["paragraph", element("p")],
  ["heading", heading],
  ["text", asText],
  ["html", asText],
  ["emphasis", element("em")],
  ["strong", element("strong")],
  ["inlineCode", (node) => `<code>${htmlText(node.value ?? "")}</code>`],
  ["code", (node) => `<pre><code>${htmlText(node.value ?? "")}</code></pre>`],
  ["break", () => "<br>"],
  ["thematicBreak", () => "<hr>"],
  ["blockquote", element("blockquote")],
  ["list", list],
  ["listItem", element("li")],
  ["link", link],
  ["linkReference", inside],
  ["image", (node) => `<span class="image">${htmlText(node.alt ?? "")}</span>`],
  ["imageReference", (node) => `<span class="image">${htmlText(node.alt ?? "")}</span>`],
  ["definition", () => ""],
  ["table", table],
]);

const written: Write = (node, options, depth) => (writers.get(node.type) ?? inside)(node, options, depth);

/** Markdown as safe HTML: no raw HTML, no script, links only to http, https, mailto and (if asked) the workspace. Images give their words. */
export const proseHtml = (markdown: string, options: ProseOptions = {}): string => written(markdownTree(markdown) as Node, options, 0);
