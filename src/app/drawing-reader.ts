// The script of a dated copy with pictures that hang on a dial.
import { pictureDrawing } from "../notebook/share/index.ts";
import { openForPrint } from "./open-for-print.ts";
import { turnDials } from "./turn-dials.tsx";

/** Starts what a copy can do. */
export function drawingReader(window: Window): void {
  openForPrint(window);
  turnDials(window.document, (picture) => pictureDrawing(picture, window.document));
}
drawingReader(window);
