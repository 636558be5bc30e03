// The page's state as signals, and what a maker can do to it. Nothing here draws; nothing elsewhere fetches.
import type { ReadonlySignal, Signal } from "@preact/signals";
import { batch, computed, signal } from "@preact/signals";
import type { PageData } from "../../notebook/share/index.ts";
import type { Api, Asked, Listing } from "./api.ts";
import { newEntry, type Place, partText, withPartText } from "./part-text.ts";

/** Ours and theirs, when the file was changed by something else meanwhile. */
export type Conflict = { readonly yours: string; readonly theirs: PageData };

export type PageState = {
  /** The notebooks of the folder, null until they are known. */
  readonly listing: ReadonlySignal<readonly Listing[] | null>;
  /** What is shown: the saved notebook, or what it would be with the draft and the dials as they stand. */
  readonly shown: ReadonlySignal<PageData | null>;
  /** Place of the part that is being written, among `shown.parts`. */
  readonly editing: ReadonlySignal<number | null>;
  /** The part that was written last: focus goes back to it. */
  readonly left: ReadonlySignal<number | null>;
  readonly draft: ReadonlySignal<string>;
  readonly unsaved: ReadonlySignal<boolean>;
  /** Said politely to whoever cannot see it change. */
  readonly message: ReadonlySignal<string>;
  readonly troubles: ReadonlySignal<readonly string[]>;
  readonly conflict: ReadonlySignal<Conflict | null>;
  readonly canUndo: ReadonlySignal<boolean>;
  readonly canRedo: ReadonlySignal<boolean>;
  readonly list: () => Promise<void>;
  readonly open: (file: string | null) => Promise<void>;
  readonly edit: (part: number) => void;
  /** Begins a new entry at the end; it is in the file once it is saved. */
  readonly add: (kind: string) => Promise<void>;
  readonly write: (body: string) => void;
  readonly leave: () => void;
  readonly save: () => Promise<boolean>;
  readonly turn: (dial: string, value: number) => void;
  readonly undo: () => Promise<void>;
  readonly redo: () => Promise<void>;
  readonly keepMine: () => Promise<void>;
  readonly takeTheirs: () => void;
  readonly changedOutside: (file: string) => Promise<void>;
  readonly share: (date: string, without: readonly string[]) => Promise<Blob | null>;
};

/** The state over an api. */
export function pageState(api: Api): PageState {
  const listing = signal<readonly Listing[] | null>(null);
  const saved = signal<PageData | null>(null);
  const shown = signal<PageData | null>(null);
  const editing = signal<number | null>(null);
  const left = signal<number | null>(null);
  const draft = signal("");
  const message = signal("");
  const troubles = signal<readonly string[]>([]);
  const conflict = signal<Conflict | null>(null);
  const [past, future] = [signal<readonly string[]>([]), signal<readonly string[]>([])];
  const dials = signal<ReadonlyMap<string, number>>(new Map());
  const run = { busy: false, again: false, opened: 0 };

  /** The text that the draft goes into, with its place: the saved one, or that with a new entry at its end. */
  const target = signal<{ readonly text: string; readonly place: Place } | null>(null);
  const wanted = computed(() =>
    target.value === null
      ? (saved.value?.text ?? "")
      : withPartText(target.value.text, target.value.place, draft.value),
  );

  function settle<T>(asked: Asked<T>): T | null {
    troubles.value = asked.ok ? [] : asked.sentences;
    return asked.ok ? asked.value : null;
  }

  function take(data: PageData): void {
    batch(() => {
      left.value = editing.value;
      [saved.value, shown.value, editing.value, target.value, draft.value, conflict.value, dials.value] = [
        data,
        data,
        null,
        null,
        "",
        null,
        new Map(),
      ];
    });
  }

  /** Computes what stands now; what changes meanwhile is computed once after it, and only the rest is announced. */
  async function preview(): Promise<void> {
    run.again = true;
    if (run.busy) return;
    run.busy = true;
    while (run.again && saved.value !== null) {
      run.again = false;
      const { file } = saved.value;
      const data = settle(await api.preview(file, wanted.value, dials.value));
      const wantedStill = saved.value?.file === file && (editing.value !== null || dials.value.size > 0);
      if (data === null || !wantedStill) continue;
      shown.value = data;
      if (!run.again) message.value = "Answers updated.";
    }
    run.busy = false;
  }

  async function put(text: string, base: string): Promise<PageData | null> {
    const before = saved.value;
    if (before === null) return null;
    message.value = "Saving.";
    const asked = await api.save(before.file, text, base);
    const data = settle(asked);
    if (data !== null) {
      take(data);
      message.value = `Saved to ${data.file}.`;
    } else {
      message.value = "Not saved.";
      if (!asked.ok && asked.status === 409 && asked.theirs) conflict.value = { yours: text, theirs: asked.theirs };
    }
    return data;
  }

  async function step(from: Signal<readonly string[]>, to: Signal<readonly string[]>, word: string): Promise<void> {
    const [text, now] = [from.value.at(-1), saved.value];
    if (text === undefined || now === null || editing.value !== null) return;
    if ((await put(text, now.digest)) === null) return;
    from.value = from.value.slice(0, -1);
    to.value = [...to.value, now.text];
    message.value = word;
  }

  async function save(base = saved.value?.digest ?? "", text = wanted.value): Promise<boolean> {
    const before = saved.value?.text ?? "";
    if (text === before) {
      leave();
      return true;
    }
    if ((await put(text, base)) === null) return false;
    past.value = [...past.value, before];
    future.value = [];
    return true;
  }

  function leave(): void {
    batch(() => {
      [left.value, editing.value, target.value, draft.value, shown.value] = [
        editing.value,
        null,
        null,
        "",
        saved.value,
      ];
    });
    if (dials.value.size > 0) void preview();
  }

  return {
    listing,
    shown,
    editing,
    left,
    draft,
    message,
    troubles,
    conflict,
    unsaved: computed(() => saved.value !== null && wanted.value !== saved.value.text),
    canUndo: computed(() => past.value.length > 0 && editing.value === null),
    canRedo: computed(() => future.value.length > 0 && editing.value === null),
    list: async () => {
      const asked = await api.notebooks();
      // What another answer complains of meanwhile stays said.
      if (asked.ok) listing.value = asked.value;
      else settle(asked);
    },
    open: async (file) => {
      const turn = ++run.opened;
      if (file === null)
        return void batch(() => ([saved.value, shown.value, editing.value, target.value] = [null, null, null, null]));
      const data = settle(await api.open(file));
      // What was asked for last is shown, whichever answer comes last.
      if (data !== null && turn === run.opened) {
        take(data);
        [past.value, future.value] = [[], []];
      }
    },
    edit: (part) => {
      const place = saved.value?.parts[part];
      if (saved.value === null || place === undefined) return;
      const { text } = saved.value;
      batch(() => {
        [editing.value, target.value, draft.value] = [part, { text, place }, partText(text, place)];
      });
    },
    add: async (kind) => {
      if (saved.value === null || editing.value !== null) return;
      const { text, parts } = saved.value;
      batch(() => {
        [editing.value, target.value, draft.value] = [parts.length, newEntry(text, kind), ""];
      });
      await preview();
    },
    write: (body) => {
      draft.value = body;
      void preview();
    },
    leave,
    save: () => save(),
    turn: (dial, value) => {
      dials.value = new Map([...dials.value, [dial, value]]);
      void preview();
    },
    undo: () => step(past, future, "Undone, and saved."),
    redo: () => step(future, past, "Done again, and saved."),
    keepMine: async () => {
      if (conflict.value !== null) await save(conflict.value.theirs.digest, conflict.value.yours);
    },
    takeTheirs: () => {
      if (conflict.value !== null) take(conflict.value.theirs);
      message.value = "The file's version is shown.";
    },
    changedOutside: async (file) => {
      const now = saved.value;
      if (now === null && file.endsWith(".md")) {
        const asked = await api.notebooks();
        if (asked.ok) listing.value = asked.value;
      }
      if (now === null || (file !== now.file && file.endsWith(".md"))) return;
      const asked = await api.open(now.file);
      if (!asked.ok || saved.value !== now || (asked.value.digest === now.digest && file === now.file)) return;
      if (editing.value === null) take(asked.value);
      message.value =
        editing.value === null
          ? `${file} was changed; the answers follow.`
          : `${file} was changed by something else. What you are writing stays.`;
    },
    share: async (date, without) => {
      const copy = saved.value === null ? null : settle(await api.share(saved.value.file, date, without));
      if (copy !== null) message.value = `The copy of ${date} is saved where the browser keeps its files.`;
      return copy;
    },
  };
}
