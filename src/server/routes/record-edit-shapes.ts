// What each sort of edit must hold in a request; a key that is not named here is refused.
import type { RecordEdit } from "../../core/records/index.ts";
import type { Shape } from "./request-parts.ts";

const isText = (value: unknown): boolean => typeof value === "string" && !/\p{Surrogate}/u.test(value);
const isNumber = (value: unknown): boolean => Number.isSafeInteger(value) && (value as number) >= 1;
const isWhat = (value: unknown): boolean => typeof value === "string";

/** Shapes by the sort of edit. */
export const recordEditShapes: { readonly [W in RecordEdit["what"]]: Shape } = {
  cell: { what: isWhat, table: isNumber, row: isNumber, col: isNumber, before: isText, after: isText },
  "set-aside": { what: isWhat, table: isNumber, row: isNumber, reason: isText },
  "bring-back": { what: isWhat, table: isNumber, row: isNumber },
  add: { what: isWhat, table: isNumber, cells: (value) => Array.isArray(value) && value.every(isText) },
  undo: { what: isWhat },
  redo: { what: isWhat },
};

/** Whether a value out of a request is an edit, with all its parts and no other. */
export function isRecordEdit(value: unknown): value is RecordEdit {
  if (typeof value !== "object" || value === null) return false;
  const parts = new Map<string, unknown>(Object.entries(value));
  const what = parts.get("what");
  if (typeof what !== "string" || !Object.hasOwn(recordEditShapes, what)) return false;
  const shape = Object.entries(recordEditShapes[what as RecordEdit["what"]]);
  return parts.size === shape.length && shape.every(([key, fits]) => parts.has(key) && fits(parts.get(key)));
}
