// Where a record table stands in the address bar: `#records/tops.csv?table=2&row=17&col=3`, each number from 1.

export type RecordsAddress = {
  readonly file: string;
  readonly table: number;
  /** Name of the table, where its number is not known. */
  readonly named?: string;
  readonly row?: number;
  readonly col?: number;
};

const TABLE = /\.(csv|tsv|txt|xlsx|ods)$/i;
const number = (asked: URLSearchParams, name: string): number | undefined => {
  const digits = /^[1-9]\d{0,8}$/.exec(asked.get(name) ?? "");
  return digits === null ? undefined : Number(digits[0]);
};

/** The link to a table, a row or a cell. */
export function recordsAddress({ file, table, named, row, col }: RecordsAddress): string {
  const name = named === undefined ? "" : `named=${encodeURIComponent(named)}`;
  const asked = [table === 1 ? "" : `table=${table}`, name, row && `row=${row}`, col && `col=${col}`].filter(Boolean);
  const path = file.split("/").map(encodeURIComponent).join("/");
  return `#${path}${asked.length ? `?${asked.join("&")}` : ""}`;
}

/** What a hash names, or null where that is no record table. */
export function addressFromHash(hash: string): RecordsAddress | null {
  const [path = "", query = ""] = hash.replace(/^#/, "").split("?");
  let file: string;
  try {
    file = path.split("/").map(decodeURIComponent).join("/");
  } catch {
    return null;
  }
  if (!TABLE.test(file)) return null;
  const asked = new URLSearchParams(query);
  const [table, row, col] = ["table", "row", "col"].map((name) => number(asked, name));
  const named = asked.get("named");
  return { file, table: table ?? 1, ...(named && { named }), ...(row && { row }), ...(col && { col }) };
}
