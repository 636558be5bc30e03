// A drawing as text: our own spelling, so that Node and every browser give the same bytes.
import type { Drawing } from "../../core/base/index.ts";
import { htmlText } from "./html-text.ts";

/** The markup of a drawing, every text and attribute escaped. */
export function markupOfDrawing(drawing: Drawing): string {
  const attributes = drawing.attributes.map(([name, value]) => ` ${name}="${htmlText(value)}"`).join("");
  const inside = drawing.children
    .map((child) => (typeof child === "string" ? htmlText(child) : markupOfDrawing(child)))
    .join("");
  return `<${drawing.tag}${attributes}>${inside}</${drawing.tag}>`;
}
