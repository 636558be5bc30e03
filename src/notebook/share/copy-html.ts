// The page of a dated copy as text. It reads without script; script only turns the dials.
import type { Drawing, Picture, View } from "../../core/base/index.ts";
import type { EntryResult, NotebookResult } from "../engine/index.ts";
import { canonicalJson } from "./canonical-json.ts";
import type { Digest } from "./copy-digest.ts";
import { BLANK_DIGEST, base64FromHex, DIGEST_MARK } from "./copy-digest.ts";
import type { EmbeddedCopy } from "./embedded-copy.ts";
import { htmlText, jsonForScript } from "./html-text.ts";
import { pictureInView } from "./picture-in-view.ts";
import { type ReaderScripts, readerNeeded } from "./reader-scripts.ts";

/** How the parts of a copy become markup. Each returns markup that is safe as it stands. */
export type CopyLooks = {
  /** `drawing`: the view's picture as drawn; null where it has none. */
  readonly renderView: (view: View, drawing: Drawing | null) => string;
  readonly renderProse: (markdown: string) => string;
  readonly drawPicture: (picture: Picture) => Drawing;
  readonly readerScripts: ReaderScripts;
  readonly readerStyle: string;
};

function entryHtml(entry: EntryResult | undefined, looks: CopyLooks): string {
  if (!entry) return "";
  const picture = pictureInView(entry.view);
  const asked = `<aside class="asked"><h2>${htmlText(entry.name)}</h2><pre>${htmlText(entry.asked)}</pre></aside>`;
  const answer = `<div class="answered">${looks.renderView(entry.view, picture ? looks.drawPicture(picture) : null)}</div>`;
  return `<section class="entry" data-kind="${htmlText(entry.kind)}" data-entry="${htmlText(entry.name)}">\n${answer}\n${asked}\n</section>`;
}

/** Entries stand in the order of their parts; names alone do not tell `records tops` from `columns tops`. */
function partsHtml(result: NotebookResult, looks: CopyLooks): string {
  const entries = result.entries.values();
  return result.parts
    .map((part) =>
      part.is === "prose"
        ? `<div class="prose">${looks.renderProse(part.text)}</div>`
        : entryHtml(entries.next().value, looks),
    )
    .join("\n");
}

const LOADS = /@import|url\(\s*["']?(?!data:|#)/i;

/** Style and script must not close their own elements, and the style must not reach outside. Both are ours: breaking it is our bug. */
function checkedReader(copy: EmbeddedCopy, looks: CopyLooks): { readonly script: string; readonly style: string } {
  const style = looks.readerStyle.replace(/\r\n?/g, "\n");
  if (LOADS.test(style) || /<\/style/i.test(style))
    throw new RangeError("the reader's style reaches outside or closes itself");
  const script = looks.readerScripts[readerNeeded(copy)]
    .replace(/\r\n?/g, "\n")
    .replace(/<\/(script)/gi, "<\\/$1")
    .replace(/<!--/g, "<\\!--")
    .replace(/\n?\/\/# sourceMappingURL=[^\n]*/g, "");
  return { script, style };
}

/** The whole file from its data and the result that they give, with the digest's place blank. The policy allows the two hashes and nothing else, and stands first in the head. */
export async function copyHtml(
  copy: EmbeddedCopy,
  result: NotebookResult,
  looks: CopyLooks,
  digest: Digest,
): Promise<string> {
  const { script, style } = checkedReader(copy, looks);
  const hash = async (text: string) => `'sha256-${base64FromHex(await digest(new TextEncoder().encode(text)))}'`;
  const policy = `default-src 'none'; script-src ${script === "" ? "'none'" : await hash(script)}; style-src ${style === "" ? "'none'" : await hash(style)}; img-src data:; connect-src 'none'; base-uri 'none'; form-action 'none'; require-trusted-types-for 'script'`;
  const title = htmlText(copy.result.title);
  const held =
    copy.withheld === 0
      ? ""
      : ` ${copy.withheld === 1 ? "One column was" : `${copy.withheld} columns were`} held back.`;
  return [
    "<!doctype html>",
    '<html lang="en">',
    "<head>",
    `<meta http-equiv="Content-Security-Policy" content="${policy}">`,
    '<meta charset="utf-8">',
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    `${DIGEST_MARK}${BLANK_DIGEST}">`,
    `<title>${title}, ${htmlText(copy.date)}</title>`,
    ...(style === "" ? [] : [`<style>${style}</style>`]),
    "</head>",
    '<body class="dated-copy">',
    `<header><p class="dated">Dated copy of ${htmlText(copy.date)}, made by Thumbrule ${htmlText(copy.version)}.${held}</p>\n<h1>${title}</h1></header>`,
    `<main id="copy">\n${partsHtml(result, looks)}\n</main>`,
    "<footer><p>To check this copy: <code>thumbrule verify</code> computes every number again from the records inside, and finds any changed byte. It does not show who made the copy, nor that the records are true.</p></footer>",
    `<script type="application/json" id="thumbrule-data">${jsonForScript(canonicalJson(copy))}</script>`,
    ...(script === "" ? [] : [`<script type="module">${script}</script>`]),
    "</body>",
    "</html>",
    "",
  ].join("\n");
}
