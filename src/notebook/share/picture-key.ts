// The key of a picture: each group's shape, colour and name above the drawing.
import type { Picture } from "../../core/base/index.ts";
import type { GroupShape } from "./group-marks.ts";
import { groupMarks } from "./group-marks.ts";

const SVG = "http://www.w3.org/2000/svg";
/** Wide enough for a narrow screen too, where the words are drawn larger. */
const LETTER = 10;
const LINE = 20;
const MOST = 30;

/** Outlines within ±5, drawn as the points are. */
const OUTLINES: Readonly<Record<GroupShape, string>> = {
  circle: "M-4,0A4,4,0,1,1,4,0A4,4,0,1,1,-4,0Z",
  square: "M-4,-4H4V4H-4Z",
  triangle: "M0,-5L4.5,3.5H-4.5Z",
  diamond: "M0,-5.5L3.5,0L0,5.5L-3.5,0Z",
  cross: "M-5,-1.7H-1.7V-5H1.7V-1.7H5V1.7H1.7V5H-1.7V1.7H-5Z",
  star: "M0,-5L1.2,-1.6H4.8L1.9,0.6L3,4L0,1.9L-3,4L-1.9,0.6L-4.8,-1.6H-1.2Z",
  wye: "M-1.7,-0.5L-4.5,-3L-2.5,-5L0,-2.5L2.5,-5L4.5,-3L1.7,-0.5V5H-1.7Z",
  times: "M-4,-4L4,4M-4,4L4,-4",
};

/** The key as an element, and the height it takes; nothing where there is one group or none. */
export function pictureKey(
  picture: Picture,
  document: Document,
  width: number,
): { readonly element: Element | null; readonly height: number } {
  // Rows down the side that bear the groups' names are their own key.
  const named = picture.y.kind === "label" && picture.y.order?.join() === picture.groups.join();
  if (picture.groups.length < 2 || named) return { element: null, height: 0 };
  const element = document.createElementNS(SVG, "g");
  element.setAttribute("aria-label", "key");
  // Below the label of the upright axis, which stands at the very top.
  let [across, down] = [16, 34];
  for (const [index, name] of picture.groups.entries()) {
    const words = name.length <= MOST ? name : `${name.slice(0, MOST - 1)}…`;
    const room = 28 + LETTER * words.length;
    if (across > 16 && across + room > width) [across, down] = [16, down + LINE];
    const mark = groupMarks(index);
    const shape = document.createElementNS(SVG, "path");
    for (const [name_, value] of [
      ["d", OUTLINES[mark.shape]],
      ["transform", `translate(${across},${down})`],
      ["stroke", mark.color],
      ["stroke-width", "1.6"],
      ["fill", mark.color],
      ["fill-opacity", "0.35"],
    ] as const)
      shape.setAttribute(name_, value);
    const text = document.createElementNS(SVG, "text");
    for (const [name_, value] of [
      ["x", String(across + 10)],
      ["y", String(down)],
      ["dy", "0.32em"],
      ["text-anchor", "start"],
      ["text-anchor", "start"],
      ["fill", "currentColor"],
    ] as const)
      text.setAttribute(name_, value);
    text.textContent = words;
    element.append(shape, text);
    across += room;
  }
  return { element, height: down - 6 };
}
