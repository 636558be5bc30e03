// A drawn element as text: our own spelling, so that Node and every browser give the same bytes.
import { htmlText } from "./html-text.ts";

const NAME = /^[A-Za-z][\w:.-]*$/;
/** Attributes that run or load something have no place in a picture, whoever put them there. */
const REFUSED = /^(on|style$|href$|xlink:href$|src$)/i;

/** A hundredth of a pixel is enough, and the same on every machine. */
const GEOMETRY = new Set(["d", "transform", "x", "y", "x1", "x2", "y1", "y2", "cx", "cy", "width", "height"]);
const rounded = (value: string) => value.replace(/-?\d+\.\d+/g, (digits) => String(Math.round(Number(digits) * 100) / 100));

/** The element with its attributes in order of name, and what it holds. Elements and attributes with odd names are left out. */
export function markupOfElement(element: Element): string {
  const tag = element.localName;
  if (!NAME.test(tag) || /^(script|style|foreignobject|use|image|a)$/i.test(tag)) return "";
  const attributes = Array.from(element.attributes)
    .filter((attribute) => NAME.test(attribute.name) && !REFUSED.test(attribute.name))
    .sort((a, b) => (a.name < b.name ? -1 : 1))
    .map((attribute) => ` ${attribute.name}="${htmlText(GEOMETRY.has(attribute.name) ? rounded(attribute.value) : attribute.value)}"`)
    .join("");
  const inside = Array.from(element.childNodes)
    .map((node) => (node.nodeType === 1 ? markupOfElement(node as Element) : node.nodeType === 3 ? htmlText(node.textContent ?? "") : ""))
    .join("");
  return `<${tag}${attributes}>${inside}</${tag}>`;
}
