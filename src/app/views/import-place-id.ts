import type { ImportWarning } from "../../core/records/index.ts";

/** Id of the place that a warning is about: its cell, its row, or its column's head. */
export const importPlaceId = ({ table, row, col }: ImportWarning): string => `read-${table}-${row ?? 0}-${col ?? 0}`;
