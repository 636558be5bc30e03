export type * from "./read-options.ts";
export type * from "./read-result.ts";
export { readTable } from "./read-table.ts";
