// A finding with its picture and trace: what every entry that answers hands on.
import type { Finding } from "../../core/base/index.ts";
import type { Column } from "../../core/columns/index.ts";
import { type PictureColumns, pictureOf } from "../../core/pictures/index.ts";
import type { Answered } from "./cells.ts";
import { traceOf } from "./trace-of.ts";

/** Raw cells that travel with a finding; `trace` follows all of them. */
const CELLS_CARRIED = 300;

/** The finding, drawn by its columns and traced back to raw cells. */
export function answered(finding: Finding, columns: readonly Column[], drawn: PictureColumns): Answered {
  const { table } = drawn;
  if (finding.kind === "refused") return { finding, table, columns };
  const picture = finding.picture ?? pictureOf(finding, drawn);
  const trace = finding.trace.steps.length > 0 ? finding.trace : traceOf(finding, table, columns, CELLS_CARRIED);
  return { finding: { ...finding, trace, ...(picture ? { picture } : {}) }, table, columns };
}
