// An axis in words: its label, and its unit where it has one.
import type { PictureAxis } from "../base/index.ts";
import { unitForDisplay } from "../units/index.ts";

/** "final thickness (mm)"; the label alone where there is no unit. */
export const axisWords = (axis: PictureAxis): string =>
  unitForDisplay(axis.unit) === "" ? axis.label : `${axis.label} (${unitForDisplay(axis.unit)})`;
