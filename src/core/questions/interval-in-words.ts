import type { Estimate } from "../base/index.ts";
import { numberInWords, unitForDisplay } from "../units/index.ts";

/** The interval of an estimate as a sentence gives it: "−0.099 to −0.061 mm/GPa". Rounded as the estimate is. */
export function intervalInWords({ low, high, standardError, unit }: Estimate): string {
  const unitWords = unitForDisplay(unit);
  const uncertainty = standardError ?? (high - low) / 4;
  return `${numberInWords(low, uncertainty)} to ${numberInWords(high, uncertainty)}${unitWords === "" ? "" : ` ${unitWords}`}`;
}
