import { roundedPair } from "./number-in-words.ts";
import { unitForDisplay } from "./unit-for-display.ts";

/**
 * An amount as a sentence gives it: "2.31 ± 0.02 mm". value and standardUncertainty are in the unit of `code` (not SI);
 * both are rounded to two significant digits of the uncertainty. Without an uncertainty: four significant digits. Finite values only.
 */
export function amountInWords(value: number, standardUncertainty: number | null, code: string): string {
  const rounded = roundedPair(value, standardUncertainty);
  const unit = unitForDisplay(code);
  const between = unit === "" || unit === "°" || unit === "′" ? "" : " ";
  const pair = rounded.uncertainty === null ? rounded.value : `${rounded.value} ± ${rounded.uncertainty}`;
  const number =
    rounded.power === ""
      ? pair
      : rounded.uncertainty === null
        ? `${pair} × ${rounded.power}`
        : `(${pair}) × ${rounded.power}`;
  return number + between + unit;
}
