// Text on its way into markup: every character that could end the text is escaped, so nothing out of a file becomes an element.

const ESCAPED = new Map([
  ["&", "&amp;"],
  ["<", "&lt;"],
  [">", "&gt;"],
  ['"', "&quot;"],
  ["'", "&#39;"],
]);

/** Control characters have no place in markup and are shown as marks instead (U+0000 as ␀); tab and line feed stay. */
const shown = (code: number) => String.fromCharCode(code === 0x7f ? 0x2421 : 0x2400 + code);

/** Text safe inside an element and inside a quoted attribute. Carriage returns become line feeds: a reader of the file would do the same. */
export function htmlText(text: string): string {
  let out = "";
  for (const character of text.replace(/\r\n?/g, "\n")) {
    const code = character.charCodeAt(0);
    const plain = (code >= 0x20 && code !== 0x7f) || code === 0x0a || code === 0x09;
    out += ESCAPED.get(character) ?? (plain ? character : shown(code));
  }
  return out;
}

/** JSON safe inside a script element that is not run: it cannot close the element, open a comment or end a line of script. */
export const jsonForScript = (json: string): string =>
  json.replace(/[<>&\u2028\u2029]/g, (character) => `\\u${character.charCodeAt(0).toString(16).padStart(4, "0")}`);
