// What the page asks of its server: each answer is data, or the sentences of its problems.
import type { PageData } from "../../notebook/share/index.ts";
import { type Asked, askServer, withBody } from "./ask-server.ts";

export type Listing = { readonly file: string; readonly title: string; readonly written: string | null };

export type { Asked } from "./ask-server.ts";

export type Api = {
  readonly notebooks: () => Promise<Asked<readonly Listing[]>>;
  readonly open: (file: string) => Promise<Asked<PageData>>;
  readonly preview: (file: string, text: string, dials: ReadonlyMap<string, number>) => Promise<Asked<PageData>>;
  readonly save: (file: string, text: string, base: string) => Promise<Asked<PageData>>;
  readonly share: (file: string, date: string, without: readonly string[]) => Promise<Asked<Blob>>;
  /** Calls back with the name of each file that something else changed; what is given back ends it. */
  readonly watch: (changed: (file: string) => void) => () => void;
};

/** The api over `fetch`. `away` is said when the server does not answer. */
export function api(away: string): Api {
  const ask = askServer(away);
  const named = (file: string) => `api/notebook/${encodeURIComponent(file)}`;
  return {
    notebooks: () =>
      ask(
        "api/workspace",
        {},
        async (answer) => ((await answer.json()) as { notebooks: readonly Listing[] }).notebooks,
      ),
    open: (file) => ask<PageData>(named(file)),
    preview: (file, text, dials) => ask<PageData>("api/preview", withBody("POST", { file, text, dials: [...dials] })),
    save: (file, text, base) => ask<PageData>(named(file), withBody("PUT", { text, base })),
    share: (file, date, without) =>
      ask("api/share", withBody("POST", { file, date, without }), (answer) => answer.blob()),
    watch: (changed) => {
      const source = new EventSource("api/events");
      source.addEventListener("message", (event) => changed((JSON.parse(String(event.data)) as { file: string }).file));
      return () => source.close();
    },
  };
}
