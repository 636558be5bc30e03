import { unitForDisplay } from "../units/index.ts";
import type { Reading } from "./reading.ts";

const unitWords = (cell: Reading): string => {
  if (cell.unit === null) return "";
  if (cell.kind === "grade") return cell.unit.startsWith("/") ? ` of ${cell.unit.slice(1)}` : ` ${cell.unit}`;
  return ` ${unitForDisplay(cell.unit)}`;
};

/** What a cell was read as, in words: "2.31 ± 0.02 mm", "4 of 5", "nothing measured", "not readable". Numbers as read, never rounded. */
export function readingInWords(cell: Reading): string {
  if (cell.kind === "blank") return "nothing measured";
  if (cell.kind === "unreadable") return "not readable";
  if (typeof cell.value === "string") return cell.value;
  return `${cell.value}${cell.uncertainty === undefined ? "" : ` ± ${cell.uncertainty}`}${unitWords(cell)}`;
}
