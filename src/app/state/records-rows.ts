// The rows of a record table as the page holds them: read 200 at a time around what is looked at, and kept while they are near.
import type { ReadonlySignal } from "@preact/signals";
import { batch, signal } from "@preact/signals";
import type { RecordsPage, RecordsRow } from "../../core/records/index.ts";
import type { Asked } from "./ask-server.ts";

const COUNT = 200;
const KEPT = 30;

export type RecordsRows = {
  /** What the last answer said of the whole table; its rows are in `at`. */
  readonly head: ReadonlySignal<RecordsPage | null>;
  /** The row at a place (from 0) among those that match, once it has been read. */
  readonly at: (position: number) => RecordsRow | undefined;
  /** Reads what is not there of these places; called again meanwhile, it reads for the last call. Gives what went wrong. */
  readonly look: (first: number, last: number) => Promise<readonly string[]>;
  /** Reads what is looked at again. Until then the rows that were read before stay, unless they are to be forgotten. */
  readonly again: (rows?: "forgotten") => Promise<readonly string[]>;
  /** Forgets all: another table is opened. */
  readonly clear: () => void;
};

/** Rows over a question for `count` of them from the `from`th; null where no table is open to be asked. */
export function recordsRows(ask: (from: number, count: number) => Promise<Asked<RecordsPage> | null>): RecordsRows {
  const head = signal<RecordsPage | null>(null);
  const pages = signal<ReadonlyMap<number, readonly RecordsRow[]>>(new Map());
  const seen = { first: 0, last: 0 };
  /** Pages that belong to the table as it is now; others are shown until they are read again. */
  let fresh = new Set<number>();
  let turn = 0;
  let under: Promise<readonly string[]> | null = null;

  const pageOf = (position: number) => Math.floor(position / COUNT);
  function missing(): number | undefined {
    const end = head.value === null ? 0 : Math.max(0, Math.min(seen.last, head.value.matching - 1));
    for (let page = pageOf(Math.min(seen.first, end)); page <= pageOf(end); page++) if (!fresh.has(page)) return page;
    return undefined;
  }

  function take(page: number, answer: RecordsPage): void {
    if (answer.digest !== head.value?.digest) fresh = new Set();
    fresh.add(page);
    const near = [...pages.value]
      .filter(([each]) => each !== page && each * COUNT < answer.matching)
      .sort(([a], [b]) => Math.abs(a - page) - Math.abs(b - page))
      .slice(0, KEPT - 1);
    for (const each of fresh) if (each !== page && !near.some(([kept]) => kept === each)) fresh.delete(each);
    batch(() => {
      pages.value = new Map([...near, [page, answer.rows]]);
      head.value = answer;
    });
  }

  // At once, and not in a later turn: what is asked for next begins anew.
  function over(sentences: readonly string[]): readonly string[] {
    under = null;
    return sentences;
  }

  async function fill(): Promise<readonly string[]> {
    for (let page = missing(); page !== undefined; page = missing()) {
      const asked = turn;
      const answer = await ask(page * COUNT + 1, COUNT);
      if (answer === null) return over([]);
      if (asked !== turn) continue;
      if (!answer.ok) return over(answer.sentences);
      take(page, answer.value);
    }
    return over([]);
  }
  /** One question at a time; the end of one is the moment to see what is wanted by then. */
  function run(): Promise<readonly string[]> {
    if (under === null && missing() === undefined) return Promise.resolve([]);
    under ??= fill();
    return under;
  }

  return {
    head,
    at: (position) => pages.value.get(pageOf(position))?.[position % COUNT],
    look: (first, last) => {
      [seen.first, seen.last] = [Math.max(0, first), last];
      return run();
    },
    again: (before) => {
      if (before === "forgotten") pages.value = new Map();
      fresh = new Set();
      turn++;
      return run();
    },
    clear: () => {
      fresh = new Set();
      turn++;
      [seen.first, seen.last] = [0, 0];
      batch(() => ([pages.value, head.value] = [new Map(), null]));
    },
  };
}
