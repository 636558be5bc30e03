import type { MarkupReader } from "./markup-reader.ts";

const ESCAPE = /_x([\da-fA-F]{4})_/g;

/** Text of XLSX with characters written as _x000D_ put in. Source: ECMA-376 part 1, 22.9.2.19. */
export const withoutEscapes = (text: string): string =>
  text.includes("_x") ? text.replace(ESCAPE, (_, hex: string) => String.fromCharCode(Number(`0x${hex}`))) : text;

/** The string of the element just opened, its runs joined; how it is pronounced is left out. */
export function richString(reader: MarkupReader): string {
  const depth = reader.depth;
  let text = "";
  let isText = false;
  let spoken = 0;
  for (let step = reader.next(); step !== "end" && reader.depth >= depth; step = reader.next()) {
    if (step === "text") text += isText && spoken === 0 ? reader.name : "";
    else if (reader.name === "t") isText = step === "open";
    else if (reader.name === "rPh") spoken += step === "open" ? 1 : -1;
  }
  return withoutEscapes(text);
}
