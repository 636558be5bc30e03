import type { EntryKind } from "../../entry-kind.ts";
import { checkPicture } from "./check-picture.ts";
import { runPicture } from "./run-picture.ts";
import { viewPicture } from "./view-picture.ts";

export const picture = {
  id: "picture",
  title: "Picture",
  sentence: "One column against another, drawn without an answer.",
  example: "final_thickness against stiffness_along, by species",
  check: checkPicture,
  run: runPicture,
  view: viewPicture,
} as const satisfies EntryKind;
