import type { ColumnTable } from "../../columns/index.ts";

/** What each kind of rule is judged on: the table and the rows that take part (1), and how many questions were asked of the table. */
export type RuleInput = { readonly table: ColumnTable; readonly mask: Uint8Array; readonly asked: number };
