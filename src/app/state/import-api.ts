// What the page asks of its server about files that may be brought in, and notebooks begun with them.
import type { ImportAnswers, ImportReading } from "../../core/records/index.ts";
import type { PageData } from "../../notebook/share/index.ts";
import { type Asked, askServer, withBody } from "./ask-server.ts";

/** A file as it is sent: its bytes are never one text in the page, which would hold it up. `answers` null: those that are remembered. */
export type ImportFile = { readonly name: string; readonly base64: Blob; readonly answers: ImportAnswers | null };

/** A notebook to begin with; `entry`: its records entry alone. */
export type Suggestion = { readonly file: string; readonly text: string; readonly entry: string };
export type Taken = {
  readonly file: string;
  readonly tables: readonly string[];
  readonly suggestion: Suggestion | null;
};

export type ImportApi = {
  readonly read: (file: ImportFile) => Promise<Asked<ImportReading>>;
  readonly take: (file: ImportFile, replace: boolean) => Promise<Asked<Taken>>;
  readonly suggest: (table: string) => Promise<Asked<Suggestion>>;
  readonly begin: (name: string, text: string) => Promise<Asked<PageData>>;
  readonly open: (notebook: string) => Promise<Asked<PageData>>;
  readonly save: (notebook: string, text: string, base: string) => Promise<Asked<PageData>>;
};

/** The api over `fetch`. */
export function importApi(away: string): ImportApi {
  const ask = askServer(away);
  const sent = ({ name, base64, answers }: ImportFile, more: object = {}): RequestInit => {
    const [options, about] = answers === null ? [null, null] : [answers.read, answers.about];
    const rest = JSON.stringify({ name, options, about, ...more });
    return {
      method: "POST",
      headers: { "content-type": "application/json" },
      body: new Blob([rest.slice(0, -1), ',"base64":"', base64, '"}']),
    };
  };
  const named = (file: string) => `api/notebook/${encodeURIComponent(file)}`;
  return {
    read: (file) => ask<ImportReading>("api/import/read", sent(file)),
    take: (file, replace) => ask<Taken>("api/import", sent(file, { replace })),
    suggest: (table) => ask<Suggestion>(`api/first-notebook/${encodeURIComponent(table)}`),
    begin: (name, text) => ask<PageData>("api/notebook", withBody("POST", { name, text })),
    open: (notebook) => ask<PageData>(named(notebook)),
    save: (notebook, text, base) => ask<PageData>(named(notebook), withBody("PUT", { text, base })),
  };
}
