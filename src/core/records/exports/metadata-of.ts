import type { ExportedColumn } from "./exported-table.ts";

/** What a typed file says of a column beside its values, as pairs of texts. */
export const metadataOf = ({ kind, unit, formula }: ExportedColumn): readonly (readonly [string, string])[] => [
  ["kind", kind],
  ...(unit === null ? [] : [["unit", unit] as const]),
  ...(formula === undefined ? [] : [["formula", formula] as const]),
];
