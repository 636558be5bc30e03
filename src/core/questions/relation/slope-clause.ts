import type { Estimate } from "../../base/index.ts";
import type { QuantityColumn } from "../../columns/index.ts";
import { amountInWords, numberInWords, unitForDisplay } from "../../units/index.ts";
import { columnInWords } from "../column-in-words.ts";
import { intervalInWords } from "../interval-in-words.ts";

/** "final thickness falls by 0.080 mm for each GPa of stiffness along"; for a power law "… goes as stiffness along to the power −0.31". */
export function slopeClause(slope: Estimate, y: QuantityColumn, x: QuantityColumn, powerLaw: boolean): string {
  const uncertainty = slope.standardError ?? null;
  if (powerLaw)
    return `${columnInWords(y)} goes as ${columnInWords(x)} to the power ${numberInWords(slope.value, uncertainty)}`;
  const size = numberInWords(Math.abs(slope.value), uncertainty);
  const unit = unitForDisplay(y.unit);
  const each = unitForDisplay(x.unit);
  return `${columnInWords(y)} ${slope.value < 0 ? "falls" : "rises"} by ${size}${unit === "" ? "" : ` ${unit}`} for each ${each === "" ? "unit" : each} of ${columnInWords(x)}`;
}

/** What a slope would be without one piece: "the slope is −0.05 mm/GPa (−0.09 to −0.01 mm/GPa)". */
export const slopeWithout = (slope: Estimate): string =>
  `the slope is ${amountInWords(slope.value, slope.standardError ?? null, slope.unit).split(" ± ")[0]} (${intervalInWords(slope)})`;
