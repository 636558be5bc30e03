import { windows1252 } from "../source/windows-1252.ts";

const encoder = new TextEncoder();
let highBytes: ReadonlyMap<string, number> | null = null;

/** Characters of Windows-1252 beyond ASCII. */
function highCharacters(): ReadonlyMap<string, number> {
  const bytes = Uint8Array.from({ length: 128 }, (_, at) => at + 128);
  highBytes ??= new Map([...windows1252(bytes)].flatMap((each, at) => (each === "\ufffd" ? [] : [[each, at + 128]])));
  return highBytes;
}

/** Text as bytes of an encoding (as `sourceText` names them), or the first character that it has no place for. */
export function encodedText(text: string, encoding: string): Uint8Array | { readonly lacks: string } {
  const half = /\p{Surrogate}/u.exec(text)?.[0];
  if (half !== undefined) return { lacks: half };
  if (encoding === "utf-8") return encoder.encode(text);
  if (encoding === "windows-1252") {
    const bytes: number[] = [];
    for (const character of text) {
      const byte = character < "\u0080" ? character.charCodeAt(0) : highCharacters().get(character);
      if (byte === undefined) return { lacks: character };
      bytes.push(byte);
    }
    return Uint8Array.from(bytes);
  }
  const bytes = new Uint8Array(2 * text.length);
  const view = new DataView(bytes.buffer);
  for (let at = 0; at < text.length; at++) view.setUint16(2 * at, text.charCodeAt(at), encoding === "utf-16le");
  return bytes;
}
