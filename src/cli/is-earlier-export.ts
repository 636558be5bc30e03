// What an export may replace: an earlier export, and never a maker's own table or notebook.
import { descriptionFromJson } from "../core/records/index.ts";
import { descriptionPath } from "../notebook/engine/index.ts";
import type { Surface } from "./surface.ts";

/** How files of each form begin; that a CSV is an export stands in its description. */
const BEGINNINGS = new Map([
  ["json", '{"version":1,"name":'],
  ["arrow", "ARROW1"],
  ["parquet", "PAR1"],
]);

/** Whether the file that stands there was exported in this form. */
export async function isEarlierExport(file: string, as: string, surface: Surface): Promise<boolean> {
  const beginning = BEGINNINGS.get(as);
  const bytes = await surface.read(beginning === undefined ? descriptionPath(file) : file);
  if (bytes === null) return false;
  const text = new TextDecoder().decode(beginning === undefined ? bytes : bytes.subarray(0, 32));
  if (beginning !== undefined) return text.startsWith(beginning);
  const about = descriptionFromJson(text);
  return about.ok && about.value.read?.guarded === true;
}
