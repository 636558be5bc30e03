// The record tables of a shop as data-schema/ describes them, by field: header, meaning, unit, what is usual.
import instruments from "../../../../data-schema/instruments.schema.json";
import referenceValues from "../../../../data-schema/reference-values.schema.json";
import rigChecks from "../../../../data-schema/rig-checks.schema.json";
import tonalNotes from "../../../../data-schema/tonal-notes.schema.json";
import wood from "../../../../data-schema/wood.schema.json";
import { heading } from "../readers/heading.ts";
import type { ColumnKind } from "../reading.ts";
import type { UsualRange } from "../table-description.ts";

/** `header`: with its unit, as a maker writes it; `name`: that header as it is read; `uncertainty`: of one reading, in `unit`. */
export type SchemaField = {
  readonly id: string;
  readonly header: string;
  readonly name: string;
  readonly meaning: string;
  readonly kind: ColumnKind;
  readonly unit: string | null;
  readonly usual: UsualRange | null;
  readonly uncertainty: number | null;
  readonly example: string;
};
export type RecordSchema = {
  readonly id: string;
  readonly title: string;
  readonly meaning: string;
  readonly fields: readonly SchemaField[];
};

type WrittenField = {
  readonly title: string;
  readonly description: string;
  readonly examples: readonly unknown[];
  readonly "x-kind": string;
  readonly "x-unit"?: string;
  readonly "x-typicalRange"?: { readonly low: number; readonly high: number };
  readonly "x-uncertainty"?: number;
};
type WrittenSchema = {
  readonly $id: string;
  readonly title: string;
  readonly description: string;
  readonly items: { readonly properties: Readonly<Record<string, unknown>> };
};

function schemaField(id: string, written: WrittenField): SchemaField {
  const { title, description, examples, "x-unit": unit = null, "x-typicalRange": range } = written;
  return {
    id,
    header: title,
    name: heading(title).name,
    meaning: description,
    kind: written["x-kind"] as ColumnKind,
    unit,
    usual: range && unit !== null ? { low: range.low, high: range.high, unit } : null,
    uncertainty: written["x-uncertainty"] ?? null,
    example: String(examples[0]),
  };
}

const recordSchema = ({ $id, title, description, items }: WrittenSchema): RecordSchema => ({
  id: $id.replace(".schema.json", ""),
  title,
  meaning: description,
  fields: Object.entries(items.properties).map(([id, field]) => schemaField(id, field as WrittenField)),
});

/** All of them, in the order in which a maker meets them. A new template is a file in data-schema/ and a word here. */
export const recordSchemas = (): readonly RecordSchema[] =>
  [wood, instruments, tonalNotes, rigChecks, referenceValues].map(recordSchema);
