import type { Column } from "./column.ts";
import { columnLength } from "./column-length.ts";

/** For each row, 1 where the column has a value and 0 where it is missing. */
export function presentMask(column: Column): Uint8Array {
  const mask = new Uint8Array(columnLength(column));
  const has = presence(column);
  for (let row = 0; row < mask.length; row++) if (has(row)) mask[row] = 1;
  return mask;
}

function presence(column: Column): (row: number) => boolean {
  switch (column.kind) {
    case "quantity":
      return (row) => !Number.isNaN(column.values[row]);
    case "yes-no":
      return (row) => column.values[row] !== -1;
    case "label":
    case "grade":
      return (row) => column.codes[row] !== -1;
    case "date":
      return (row) => !Number.isNaN(column.days[row]);
    case "pitch":
      return (row) => !Number.isNaN(column.frequencies[row]);
    case "words":
      return (row) => column.texts[row] !== null;
  }
}
