import type { ColumnTable } from "../../../../core/columns/index.ts";
import type { NameAt } from "../../../language/index.ts";
import { type Computed, computed, failed } from "../../cell.ts";
import type { Surroundings } from "../../surroundings.ts";

export type UseSpec = {
  readonly entry: string;
  readonly names: readonly NameAt[];
  readonly file: string;
  readonly path: string;
};

/** The table of the other notebook that has all the named columns; a notebook that comes back to this one is a ring. */
export async function runUse(
  { entry, names, file, path }: UseSpec,
  around: Surroundings,
): Promise<Computed<ColumnTable>> {
  const asked = around.otherTables(path);
  if (asked === null) return failed({ code: "ring", facts: { ring: file }, span: null });
  const tables = await asked;
  if (tables === null) return failed({ code: "missing-file", facts: { file }, span: null });
  const whole = [...tables.values()].find((table) => names.every((name) => table.columns.has(name.name)));
  if (whole) return computed({ ...whole, name: entry });
  const known = new Set([...tables.values()].flatMap((table) => [...table.columns.keys()]));
  const lacking = names.filter((name) => !known.has(name.name));
  const away = lacking.length > 0 ? lacking : names;
  return failed(
    ...away.map((name) => ({
      code: "unknown-column" as const,
      facts: { name: name.name, table: file },
      span: { from: name.from, to: name.to },
    })),
  );
}
