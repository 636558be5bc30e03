// A drawn element as plain data, for a page that builds pictures node by node and parses no markup.
import type { Drawing } from "../../core/base/index.ts";

/** Attributes that run or load something have no place in a picture, whoever put them there. */
const REFUSED = /^(on|style$|href$|xlink:href$|src$)/i;
const REFUSED_TAG = /^(script|style|foreignobject|use|image|a)$/i;
const NAME = /^[A-Za-z][\w:.-]*$/;

/** A hundredth of a pixel is enough, and the same on every machine. */
const GEOMETRY = new Set(["d", "transform", "x", "y", "x1", "x2", "y1", "y2", "cx", "cy", "width", "height"]);
const rounded = (value: string) =>
  value.replace(/-?\d+\.\d+/g, (digits) => String(Math.round(Number(digits) * 100) / 100));

/** The element as data: its tag, its attributes in order of name, what it holds. Empty texts and odd names are left out. */
export function drawingOfElement(element: Element): Drawing {
  const attributes = Array.from(element.attributes)
    .filter(({ name }) => NAME.test(name) && !REFUSED.test(name))
    .map(({ name, value }) => [name, GEOMETRY.has(name) ? rounded(value) : value] as const)
    .sort(([a], [b]) => (a < b ? -1 : 1));
  const children = Array.from(element.childNodes).flatMap((node): (Drawing | string)[] => {
    if (node.nodeType === 1)
      return REFUSED_TAG.test(node.nodeName) || !NAME.test(node.nodeName) ? [] : [drawingOfElement(node as Element)];
    return node.nodeType === 3 && node.textContent ? [node.textContent] : [];
  });
  // Some documents name elements in capitals; SVG has one name with a capital inside.
  const tag = element.nodeName.toLowerCase();
  return { tag: tag === "clippath" ? "clipPath" : tag, attributes, children };
}
