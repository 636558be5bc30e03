// Says of a table's columns what the schema of such tables says, where the maker has not.
import { sameDimension, unitFromText } from "../../units/index.ts";
import type { RecordColumn, RecordTable } from "../read-result.ts";
import type { DescribedColumn, TableDescription } from "../table-description.ts";
import { type RecordSchema, recordSchemas, type SchemaField } from "./record-schemas.ts";

/** Fewer columns in common with a schema are chance. */
const COLUMNS_IN_COMMON = 3;

type Said = ReadonlyMap<string, DescribedColumn>;

const fieldId = (header: string): string =>
  header
    .toLowerCase()
    .split(/[^\p{L}\p{N}]/u)
    .filter((word) => word !== "")
    .join("_");

/** Whether the column can hold what the field does: a quantity in a unit of the same kind, or anything where the field is none. */
function isOfField({ name, kind, unit }: RecordColumn, field: SchemaField, said: Said): boolean {
  if (field.unit === null) return true;
  const [own, wanted] = [unitFromText(said.get(name)?.unit ?? unit ?? ""), unitFromText(field.unit)];
  return kind === "quantity" && own !== null && wanted !== null && sameDimension(own.dimension, wanted.dimension);
}

/** Columns by header with the fields they are, of one schema. */
function fieldsOf(columns: readonly RecordColumn[], schema: RecordSchema, said: Said): Map<string, SchemaField> {
  const byId = new Map(schema.fields.map((field) => [field.id, field]));
  return new Map(
    columns.flatMap((column) => {
      const field = byId.get(fieldId(column.name));
      return field && isOfField(column, field, said) ? [[column.name, field]] : [];
    }),
  );
}

/** The fields of the schema with which the table has most columns in common; none where that may be chance. */
function matchedFields(
  { columns }: RecordTable,
  schemas: readonly RecordSchema[],
  said: Said,
): ReadonlyMap<string, SchemaField> {
  let best = new Map<string, SchemaField>();
  for (const schema of schemas) {
    const fields = fieldsOf(columns, schema, said);
    if (fields.size > best.size) best = fields;
  }
  return best.size < COLUMNS_IN_COMMON ? new Map() : best;
}

/**
 * The description with meaning and usual range of each column that a schema knows. tables: as read from the file; said: what the maker says,
 * which always holds. Null where nobody says anything.
 */
export function descriptionWithUsual(
  tables: readonly RecordTable[],
  said: TableDescription | null,
): TableDescription | null {
  const columns = new Map(Object.entries(said?.columns ?? {}));
  const own: Said = new Map(columns);
  const schemas = recordSchemas();
  for (const table of tables)
    for (const [name, { meaning, usual }] of matchedFields(table, schemas, own))
      columns.set(name, { meaning, ...(usual ? { usual } : {}), ...own.get(name) });
  return columns.size === own.size && [...columns].every(([name, column]) => own.get(name) === column)
    ? said
    : { ...said, columns: Object.fromEntries(columns) };
}
