import type { Column } from "../columns/index.ts";

/** A column's name as a sentence says it: `final_thickness` is "final thickness". */
export const columnInWords = (column: Pick<Column, "name">): string => column.name.replaceAll("_", " ");
