import validate from "../../../data-schema/table-description.schema.json?validator";
import type { Outcome } from "../base/index.ts";
import { declined, succeeded } from "../base/index.ts";
import type { DescribedColumn, TableDescription } from "./table-description.ts";

type Written = TableDescription & {
  readonly fields?: readonly (DescribedColumn & { readonly name: string; readonly description?: string })[];
};

function parsed(text: string): { value: unknown } | null {
  try {
    return { value: JSON.parse(text) as unknown };
  } catch {
    return null;
  }
}

/** Fields of Table Schema as columns by header; what `columns` says of the same header goes first. */
function columnsOf({ fields = [], columns = {} }: Written): TableDescription["columns"] {
  const all = new Map<string, DescribedColumn>();
  for (const { name, description, kind, unit, uncertainty, usual } of fields)
    all.set(name, {
      ...(kind ? { kind } : {}),
      ...(unit ? { unit } : {}),
      ...(uncertainty ? { uncertainty } : {}),
      ...(usual ? { usual } : {}),
      ...(description ? { meaning: description } : {}),
    });
  for (const [name, column] of Object.entries(columns)) all.set(name, { ...all.get(name), ...column });
  return Object.fromEntries(all);
}

/** Where and why the description is one this program must not follow, null if nothing. `json`: any value of JSON. */
function misplaced(json: unknown): { place: string; reason: string } | null {
  if (typeof json !== "object" || json === null) return null;
  const said = new Map(Object.entries(json));
  const version = said.get("version");
  if (version !== undefined && version !== 1 && version !== "1")
    return { place: "version", reason: "only version 1 is known here" };
  for (const place of ["path", "resources"])
    if (said.has(place)) return { place, reason: "a description is for the table beside it and names no file" };
  return null;
}

/** The description in a text of JSON, or where and why it is not understood. */
export function descriptionFromJson(text: string): Outcome<TableDescription> {
  const json = parsed(text.startsWith("\ufeff") ? text.slice(1) : text);
  if (!json) return declined("description-not-understood", { place: "", reason: "it is not JSON" });
  const wrong = misplaced(json.value);
  if (wrong) return declined("description-not-understood", wrong);
  if (!validate(json.value)) {
    const first = validate.errors?.[0];
    return declined("description-not-understood", {
      place: first?.instancePath.slice(1) ?? "",
      reason: first?.message ?? "it has another shape",
    });
  }
  const { fields: _, ...rest } = json.value as Written;
  const columns = columnsOf(json.value as Written);
  return succeeded({ ...rest, ...(columns && Object.keys(columns).length > 0 ? { columns } : {}) });
}
