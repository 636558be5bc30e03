// From the data of a copy to its file, digest in place.
import type { NotebookResult } from "../engine/index.ts";
import type { Digest } from "./copy-digest.ts";
import { BLANK_DIGEST, DIGEST_MARK } from "./copy-digest.ts";
import type { CopyLooks } from "./copy-html.ts";
import { copyHtml } from "./copy-html.ts";
import type { EmbeddedCopy } from "./embedded-copy.ts";

export type WrittenCopy = { readonly html: string; readonly digest: string; readonly embedded: EmbeddedCopy };

/** Writes the file of a copy and puts its digest in place. result: what the copy's own records give, in full. */
export async function copyFromEmbedded(
  embedded: EmbeddedCopy,
  result: NotebookResult,
  looks: CopyLooks,
  digest: Digest,
): Promise<WrittenCopy> {
  const blank = await copyHtml(embedded, result, looks, digest);
  const stated = await digest(new TextEncoder().encode(blank));
  return { html: blank.replace(DIGEST_MARK + BLANK_DIGEST, () => DIGEST_MARK + stated), digest: stated, embedded };
}
