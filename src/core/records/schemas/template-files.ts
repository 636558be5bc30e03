// Empty tables of a new workspace, made from the schemas: a header to fill in beneath, and beside it what each column means.
import { type RecordSchema, recordSchemas, type SchemaField } from "./record-schemas.ts";

/** Spreadsheets take a file for UTF-8 only by this mark; reading drops it. */
const MARK = "\ufeff";

const GUESSED = "Uncertainties and usual ranges are common practice, not yours: correct them.";

const described = ({ name, meaning, kind, unit, usual, uncertainty }: SchemaField): object => ({
  name,
  description: meaning,
  kind,
  ...(unit === null ? {} : { unit }),
  ...(uncertainty === null || unit === null ? {} : { uncertainty: { value: uncertainty, unit } }),
  ...(usual === null ? {} : { usual }),
});

/** One field a line, for who reads and edits it by hand. */
function description({ title, meaning, fields }: RecordSchema): string {
  const guesses = fields.some((field) => field.usual !== null);
  const head = { version: 1, title, description: guesses ? `${meaning} ${GUESSED}` : meaning };
  const lines = fields.map((field) => `    ${JSON.stringify(described(field))}`);
  return `${JSON.stringify(head, null, 2).slice(0, -2)},\n  "fields": [\n${lines.join(",\n")}\n  ]\n}\n`;
}

const header = ({ fields }: RecordSchema): string => `${MARK}${fields.map((field) => field.header).join(",")}\n`;

/** Table and description of each schema, by path in the workspace. */
export const templateFiles = (): ReadonlyMap<string, string> =>
  new Map(
    recordSchemas().flatMap((schema) => [
      [`records/${schema.id}.csv`, header(schema)],
      [`records/${schema.id}.about.json`, description(schema)],
    ]),
  );
