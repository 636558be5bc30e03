import { unitForDisplay } from "../units/index.ts";
import type { ReadCell } from "./read-table.ts";

/** The reading of a cell as a trace shows it: "2.31 ± 0.02 mm"; "missing" where there is none. Numbers as read, never rounded. */
export function cellInWords(cell: ReadCell): string {
  if (cell.value === null) return "missing";
  if (typeof cell.value === "string") return cell.value;
  const unit = cell.unit === null ? "" : cell.unit.startsWith("/") ? cell.unit : ` ${cell.kind === "grade" ? cell.unit : unitForDisplay(cell.unit)}`;
  return `${cell.value}${cell.uncertainty === undefined ? "" : ` ± ${cell.uncertainty}`}${unit}`;
}
