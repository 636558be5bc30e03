import type { WoodInput } from "./wood-method.ts";

/** The number of a bending mode. */
export const modeInput: WoodInput = {
  kind: "number",
  dimension: "1",
  meaning: "number of the mode: 1, 2, 3 …",
  whole: true,
  atLeast: 1,
  atMost: 100,
};
