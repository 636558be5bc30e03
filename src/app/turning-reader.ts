// The script of a dated copy whose dials change amounts only: no drawing library.
import { openForPrint } from "./open-for-print.ts";
import { turnDials } from "./turn-dials.tsx";

/** Starts what a copy can do. */
export function turningReader(window: Window): void {
  openForPrint(window);
  turnDials(window.document, null);
}
turningReader(window);
