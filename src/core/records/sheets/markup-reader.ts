// Reads XML from front to back, a tag or a stretch of text at a time, and keeps nothing of it. Document types and entities of
// one's own are not followed: they are trouble. Source: XML 1.0, fifth edition; C10 of the promises about bad input.
import { limits } from "../../base/index.ts";
import type { WorkbookTrouble } from "./workbook-trouble.ts";

const ENTITIES = new Map([
  ["amp", "&"],
  ["lt", "<"],
  ["gt", ">"],
  ["quot", '"'],
  ["apos", "'"],
]);
const LONGEST_ENTITY = 10;
const isSpace = (code: number) => code === 32 || code === 9 || code === 10 || code === 13;

/** `next` moves to what comes next and tells its kind; at the end, or at trouble, "end". */
export class MarkupReader {
  /** Name of the tag without its prefix, or the text. */
  name = "";
  trouble: WorkbookTrouble | null = null;
  readonly #text: string;
  #at = 0;
  #depth = 0;
  #closes = false;
  #attributes = "";

  constructor(text: string) {
    this.#text = text;
  }

  /** How many elements are open. */
  get depth(): number {
    return this.#depth;
  }

  next(): "open" | "close" | "text" | "end" {
    if (this.#closes) {
      this.#closes = false;
      this.#depth--;
      return "close";
    }
    while (this.trouble === null && this.#at < this.#text.length) {
      if (this.#text.charCodeAt(this.#at) !== 60) return this.#plain();
      const after = this.#text[this.#at + 1] ?? "";
      if (after === "/") return this.#closing();
      if (after === "?") this.#skip("?>");
      else if (this.#text.startsWith("<!--", this.#at)) this.#skip("-->");
      else if (this.#text.startsWith("<![CDATA[", this.#at)) return this.#section();
      else if (after === "!") this.trouble = "unsafe-workbook";
      else return this.#opening();
    }
    if (this.trouble === null && this.#depth !== 0) this.trouble = "broken-workbook";
    return "end";
  }

  /** An attribute of the tag just opened, by its name as written, or by the end of its name where that begins with a colon. */
  attribute(name: string): string | undefined {
    const all = this.#attributes;
    for (let at = 0; at < all.length; ) {
      while (isSpace(all.charCodeAt(at))) at++;
      const equals = all.indexOf("=", at);
      if (equals < 0) return undefined;
      let from = equals + 1;
      while (isSpace(all.charCodeAt(from))) from++;
      const end = all.indexOf(all[from] ?? "", from + 1);
      if (end < 0) return undefined;
      const own = all.slice(at, equals).trimEnd();
      if (own === name || (name.startsWith(":") && own.endsWith(name))) return this.#decoded(all.slice(from + 1, end));
      at = end + 1;
    }
    return undefined;
  }

  #stop(trouble: WorkbookTrouble): "end" {
    this.trouble = trouble;
    return "end";
  }

  #skip(mark: string): void {
    const end = this.#text.indexOf(mark, this.#at);
    if (end < 0) this.trouble = "broken-workbook";
    this.#at = end + mark.length;
  }

  #plain(): "text" {
    const next = this.#text.indexOf("<", this.#at);
    const end = next < 0 ? this.#text.length : next;
    this.name = this.#decoded(this.#text.slice(this.#at, end));
    this.#at = end;
    return "text";
  }

  #section(): "text" | "end" {
    const end = this.#text.indexOf("]]>", this.#at);
    if (end < 0) return this.#stop("broken-workbook");
    this.name = this.#text.slice(this.#at + 9, end);
    this.#at = end + 3;
    return "text";
  }

  #closing(): "close" | "end" {
    const end = this.#text.indexOf(">", this.#at);
    if (end < 0 || this.#depth === 0) return this.#stop("broken-workbook");
    this.#named(this.#text.slice(this.#at + 2, end).trimEnd());
    this.#at = end + 1;
    this.#depth--;
    return "close";
  }

  #opening(): "open" | "end" {
    const text = this.#text;
    let end = this.#at + 1;
    for (let quote = 0; end < text.length; end++) {
      const code = text.charCodeAt(end);
      if (quote !== 0) quote = code === quote ? 0 : quote;
      else if (code === 34 || code === 39) quote = code;
      else if (code === 62) break;
    }
    if (end >= text.length) return this.#stop("broken-workbook");
    if (++this.#depth > limits.markupDepth.value) return this.#stop("broken-workbook");
    this.#closes = text.charCodeAt(end - 1) === 47;
    const stop = this.#closes ? end - 1 : end;
    let nameEnd = this.#at + 1;
    while (nameEnd < stop && !isSpace(text.charCodeAt(nameEnd))) nameEnd++;
    this.#named(text.slice(this.#at + 1, nameEnd));
    this.#attributes = text.slice(nameEnd, stop);
    this.#at = end + 1;
    return "open";
  }

  #named(written: string): void {
    this.name = written.slice(written.indexOf(":") + 1);
  }

  #decoded(written: string): string {
    if (!written.includes("&") && !written.includes("\r")) return written;
    const [first = "", ...rest] = written.replaceAll("\r\n", "\n").replaceAll("\r", "\n").split("&");
    return first + rest.map((part) => this.#entity(part)).join("");
  }

  /** What stands after an ampersand, its entity resolved. */
  #entity(part: string): string {
    const end = part.indexOf(";");
    const name = end < 0 || end > LONGEST_ENTITY ? "" : part.slice(0, end);
    const known = ENTITIES.get(name) ?? characterOf(name);
    if (known === null) this.trouble = "broken-workbook";
    return `${known ?? ""}${part.slice(end + 1)}`;
  }
}

/** The character of "#65" or "#x41", null if there is none. */
function characterOf(name: string): string | null {
  const code = /^#\d+$/.test(name)
    ? Number(name.slice(1))
    : /^#x[\da-fA-F]+$/.test(name)
      ? Number(`0${name.slice(1)}`)
      : -1;
  return code > 0 && code <= 0x10ffff ? String.fromCodePoint(code) : null;
}
