import type { PageData } from "../../notebook/share/index.ts";

export type Asked<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly status: number; readonly sentences: readonly string[]; readonly theirs?: PageData };

export type AskServer = <T>(
  path: string,
  init?: RequestInit,
  read?: (answer: Response) => Promise<T>,
) => Promise<Asked<T>>;

type Failure = { readonly problems?: readonly { readonly sentence: string }[]; readonly theirs?: PageData };

/** Asks over `fetch`: an answer is a value, or the sentences of its problems. `away` is said when the server does not answer. */
export function askServer(away: string): AskServer {
  return async <T>(
    path: string,
    init: RequestInit = {},
    read = (answer: Response) => answer.json() as Promise<T>,
  ): Promise<Asked<T>> => {
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
      ...(typeof failure.theirs === "object" ? { theirs: failure.theirs } : {}),
    };
  };
}

/** A request with a JSON body. */
export const withBody = (method: string, body: unknown): RequestInit => ({
  method,
  headers: { "content-type": "application/json" },
  body: JSON.stringify(body),
});
