// What the page asks of its server about record tables.
import type { RecordEdit, RecordsListing, RecordsPage } from "../../core/records/index.ts";
import { type Asked, askServer, withBody } from "./ask-server.ts";

/** Which rows: `count` of one table from the `from`th (from 1) of those that match. */
export type RecordsWish = {
  readonly table: number;
  readonly from: number;
  readonly count: number;
  readonly only: "all" | "warned";
};

export type RecordsApi = {
  readonly tables: () => Promise<Asked<readonly RecordsListing[]>>;
  readonly page: (file: string, wish: RecordsWish) => Promise<Asked<RecordsPage>>;
  /** `base`: the digest that was seen. The same `id` twice does the work once. */
  readonly edit: (file: string, base: string, id: string, edits: readonly RecordEdit[]) => Promise<Asked<RecordsPage>>;
  readonly write: (file: string, base: string) => Promise<Asked<RecordsPage>>;
};

/** The api over `fetch`. */
export function recordsApi(away: string): RecordsApi {
  const ask = askServer(away);
  const named = (file: string) => `api/records/${encodeURIComponent(file)}`;
  return {
    tables: () =>
      ask("api/records", {}, async (answer) => ((await answer.json()) as { tables: readonly RecordsListing[] }).tables),
    page: (file, { table, from, count, only }) =>
      ask<RecordsPage>(`${named(file)}?table=${table}&from=${from}&count=${count}&only=${only}`),
    edit: (file, base, id, edits) => ask<RecordsPage>(`${named(file)}/edits`, withBody("POST", { base, id, edits })),
    write: (file, base) => ask<RecordsPage>(`${named(file)}/write`, withBody("POST", { base })),
  };
}
