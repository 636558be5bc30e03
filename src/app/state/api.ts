// What the page asks of its server: each answer is data, or the sentences of its problems.
import type { PageData } from "../../notebook/share/index.ts";

export type Listing = { readonly file: string; readonly title: string; readonly written: string | null };

export type Asked<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly status: number; readonly sentences: readonly string[]; readonly theirs?: PageData };

export type Api = {
  readonly notebooks: () => Promise<Asked<readonly Listing[]>>;
  readonly open: (file: string) => Promise<Asked<PageData>>;
  readonly preview: (file: string, text: string, dials: ReadonlyMap<string, number>) => Promise<Asked<PageData>>;
  readonly save: (file: string, text: string, base: string) => Promise<Asked<PageData>>;
  readonly share: (file: string, date: string, without: readonly string[]) => Promise<Asked<Blob>>;
  /** Calls back with the name of each file that something else changed; what is given back ends it. */
  readonly watch: (changed: (file: string) => void) => () => void;
};

type Failure = { readonly problems?: readonly { readonly sentence: string }[]; readonly theirs?: PageData };

/** The api over `fetch`. `away` is said when the server does not answer. */
export function api(away: string): Api {
  async function ask<T>(path: string, init: RequestInit, read: (answer: Response) => Promise<T>): Promise<Asked<T>> {
    let answer: Response;
    try {
      answer = await fetch(path, init);
      if (answer.ok) return { ok: true, value: await read(answer) };
    } catch {
      return { ok: false, status: 0, sentences: [away] };
    }
    const failure = (await answer.json().catch(() => ({}))) as Failure;
    const sentences = (failure.problems ?? []).map((problem) => problem.sentence);
    return {
      ok: false,
      status: answer.status,
      sentences: sentences.length ? sentences : [away],
      ...(failure.theirs ? { theirs: failure.theirs } : {}),
    };
  }
  const json = <T>(answer: Response) => answer.json() as Promise<T>;
  const sent = (method: string, body: unknown): RequestInit => ({
    method,
    headers: { "content-type": "application/json" },
    body: JSON.stringify(body),
  });
  const named = (file: string) => `api/notebook/${encodeURIComponent(file)}`;
  return {
    notebooks: () =>
      ask("api/workspace", {}, async (answer) => (await json<{ notebooks: readonly Listing[] }>(answer)).notebooks),
    open: (file) => ask(named(file), {}, json<PageData>),
    preview: (file, text, dials) => ask("api/preview", sent("POST", { file, text, dials: [...dials] }), json<PageData>),
    save: (file, text, base) => ask(named(file), sent("PUT", { text, base }), json<PageData>),
    share: (file, date, without) => ask("api/share", sent("POST", { file, date, without }), (answer) => answer.blob()),
    watch: (changed) => {
      const source = new EventSource("api/events");
      source.addEventListener("message", (event) => changed((JSON.parse(String(event.data)) as { file: string }).file));
      return () => source.close();
    },
  };
}
