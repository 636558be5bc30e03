import { unitForDisplay } from "../units/index.ts";
import type { Reading } from "./reading.ts";

const unitWords = (cell: Reading): string => {
  if (cell.unit === null) return "";
  if (cell.kind === "grade") return cell.unit.startsWith("/") ? ` of ${cell.unit.slice(1)}` : ` ${cell.unit}`;
  return ` ${unitForDisplay(cell.unit)}`;
};

/** Half of 0.2 is 0.1, also where two decimals are subtracted in binary. */
const decimal = (value: number): string => String(Number(value.toPrecision(12)));

/** What a cell was read as, in words: "2.31 ± 0.02 mm", "4 of 5", "nothing measured", "not readable". Numbers as read; an uncertainty to twelve digits. */
export function readingInWords(cell: Reading): string {
  if (cell.kind === "blank") return "nothing measured";
  if (cell.kind === "unreadable") return "not readable";
  if (typeof cell.value === "string") return cell.value;
  return `${cell.value}${cell.uncertainty === undefined ? "" : ` ± ${decimal(cell.uncertainty)}`}${unitWords(cell)}`;
}
