// A drawing built up node by node from plain data. Only what is on these lists is built; nothing is parsed.
import { createElement, type VNode } from "preact";
import type { Drawing } from "../../core/base/index.ts";

const TAGS = new Set([
  "svg",
  "g",
  "path",
  "circle",
  "rect",
  "line",
  "polyline",
  "polygon",
  "ellipse",
  "text",
  "tspan",
  "title",
  "desc",
  "defs",
  "clipPath",
]);
const ATTRIBUTES = new Set([
  "aria-label",
  "aria-hidden",
  "aria-description",
  "role",
  "class",
  "viewBox",
  "width",
  "height",
  "d",
  "x",
  "y",
  "x1",
  "x2",
  "y1",
  "y2",
  "cx",
  "cy",
  "r",
  "rx",
  "ry",
  "dx",
  "dy",
  "points",
  "transform",
  "fill",
  "fill-opacity",
  "fill-rule",
  "stroke",
  "stroke-width",
  "stroke-opacity",
  "stroke-dasharray",
  "stroke-linecap",
  "stroke-linejoin",
  "stroke-miterlimit",
  "opacity",
  "text-anchor",
  "font-size",
  "font-family",
  "font-variant",
  "font-weight",
  "dominant-baseline",
  "paint-order",
  "id",
  "clip-path",
]);
const DEEPEST = 30;
// Only the picture as a whole has a name for screen readers; its parts are its numbers, which stand in the table beside it.

function built(node: Drawing | string, depth: number, key: number): VNode | string | null {
  if (typeof node === "string") return node;
  if (!TAGS.has(node.tag) || depth > DEEPEST) return null;
  const attributes = Object.fromEntries(
    node.attributes.filter(([name]) => ATTRIBUTES.has(name) && (depth === 0 || !name.startsWith("aria-"))),
  );
  return createElement(
    node.tag,
    { ...attributes, key },
    node.children.map((child, place) => built(child, depth + 1, place)),
  );
}

/** The picture as it was drawn. */
export const DrawnPicture = ({ drawing }: { readonly drawing: Drawing }) => <>{built(drawing, 0, 0)}</>;
