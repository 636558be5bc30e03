import type { ColumnTable } from "../columns/index.ts";
import { unitFromCode } from "../units/index.ts";
import type { Amounts } from "./amount.ts";
import type { ValueType } from "./value-type.ts";
import { typeOfColumn } from "./value-type.ts";

/** Which names a formula may use and what each is. `table`: the record table's name, null where there are only values. Columns go before values. */
export type FormulaScope = {
  readonly table: string | null;
  readonly columns: ReadonlyMap<string, ValueType>;
  readonly values: ReadonlyMap<string, ValueType>;
};

/** The scope of a table's columns and a notebook's values. */
export function scopeFromTable(table: ColumnTable | null, values: Amounts): FormulaScope {
  return {
    table: table?.name ?? null,
    columns: new Map([...(table?.columns ?? [])].map(([name, column]) => [name, typeOfColumn(column)])),
    values: new Map(
      [...values].map(([name, { unit }]) => [
        name,
        { kind: "quantity", dimension: unitFromCode(unit).dimension, unit },
      ]),
    ),
  };
}
