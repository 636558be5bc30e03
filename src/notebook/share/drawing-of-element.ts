// A drawn element as plain data, for a page that builds pictures node by node and parses no markup.
import type { Drawing } from "../../core/base/index.ts";

/** Attributes that run or load something have no place in a picture, whoever put them there. */
const REFUSED = /^(on|style$|href$|xlink:href$|src$)/i;

/** The element as data: its tag, its attributes in order of name, what it holds. Empty texts are left out. */
export function drawingOfElement(element: Element): Drawing {
  const attributes = Array.from(element.attributes)
    .filter(({ name }) => !REFUSED.test(name))
    .map(({ name, value }) => [name, value] as const)
    .sort(([a], [b]) => (a < b ? -1 : 1));
  const children = Array.from(element.childNodes).flatMap((node): (Drawing | string)[] => {
    if (node.nodeType === 1) return [drawingOfElement(node as Element)];
    return node.nodeType === 3 && node.textContent ? [node.textContent] : [];
  });
  // Some documents name elements in capitals; SVG has one name with a capital inside.
  const tag = element.nodeName.toLowerCase();
  return { tag: tag === "clippath" ? "clipPath" : tag, attributes, children };
}
