// The state of the record table that is open: where the maker stands in it, what is being written, and what has been done. Nothing draws here.
import type { ReadonlySignal } from "@preact/signals";
import { batch, computed, signal } from "@preact/signals";
import type { RecordEdit, RecordsListing, RecordsPage, RecordsRow } from "../../core/records/index.ts";
import { editSender } from "./edit-sender.ts";
import type { RecordsAddress } from "./records-address.ts";
import type { RecordsApi } from "./records-api.ts";
import { draftAt, draftOver, editFromDraft, type RecordsDraft, savedInWords } from "./records-draft.ts";
import { recordsRows } from "./records-rows.ts";

/** A cell of the grid: `position` from 0 among the rows shown, `col` from 1; 0 is the row's own head. */
export type RecordsPlace = { readonly position: number; readonly col: number };

export type RecordsState = {
  readonly tables: ReadonlySignal<readonly RecordsListing[]>;
  /** The file that is open; null while a notebook or the contents are. */
  readonly file: ReadonlySignal<string | null>;
  readonly head: ReadonlySignal<RecordsPage | null>;
  readonly only: ReadonlySignal<"all" | "warned">;
  readonly place: ReadonlySignal<RecordsPlace>;
  /** Counts up whenever focus belongs on the cell at `place`. */
  readonly called: ReadonlySignal<number>;
  readonly draft: ReadonlySignal<RecordsDraft | null>;
  /** Why the draft was not saved. */
  readonly faults: ReadonlySignal<readonly string[]>;
  /** Whether the table was changed by something else after the draft was begun. */
  readonly stale: ReadonlySignal<boolean>;
  readonly message: ReadonlySignal<string>;
  readonly troubles: ReadonlySignal<readonly string[]>;
  readonly unsaved: ReadonlySignal<boolean>;
  readonly canUndo: ReadonlySignal<boolean>;
  readonly canRedo: ReadonlySignal<boolean>;
  readonly rowAt: (position: number) => RecordsRow | undefined;
  readonly list: () => Promise<void>;
  readonly open: (address: RecordsAddress | null) => Promise<void>;
  readonly look: (first: number, last: number) => Promise<void>;
  readonly show: (only: "all" | "warned") => Promise<void>;
  /** Goes to a cell; what has been written is saved first, and stays open when that fails. */
  readonly go: (place: RecordsPlace) => Promise<void>;
  /** Goes to a row of the table by its number, whatever is shown. */
  readonly goToRow: (row: number, col: number) => Promise<void>;
  /** Opens the cell as text, or the row's head for a reason. */
  readonly begin: () => void;
  readonly write: (text: string) => void;
  readonly leave: () => void;
  readonly save: () => Promise<boolean>;
  readonly bringBack: () => Promise<boolean>;
  readonly add: (cells: readonly string[]) => Promise<boolean>;
  readonly readAgain: () => Promise<void>;
  readonly undo: () => Promise<void>;
  readonly redo: () => Promise<void>;
  readonly writeFile: () => Promise<void>;
  readonly changedOutside: (file: string) => Promise<void>;
};

const NO_REASON = "Say why, in a few words: the reason stays with the row.";
const START: RecordsPlace = { position: 0, col: 1 };

/** The state over an api. `newId` names each edit, so that one sent twice is done once. */
export function recordsState(api: RecordsApi, newId: () => string): RecordsState {
  const tables = signal<readonly RecordsListing[]>([]);
  const open = signal<{ readonly file: string; readonly table: number } | null>(null);
  const only = signal<"all" | "warned">("all");
  const place = signal<RecordsPlace>(START);
  const called = signal(0);
  const draft = signal<RecordsDraft | null>(null);
  const [faults, troubles] = [signal<readonly string[]>([]), signal<readonly string[]>([])];
  const [stale, message] = [signal(false), signal("")];
  const send = editSender(api, newId);
  const rows = recordsRows(async (from, count) =>
    open.value === null ? null : api.page(open.value.file, { table: open.value.table, from, count, only: only.value }),
  );
  const { head } = rows;
  let saving: Promise<boolean> | null = null;
  const here = () => rows.at(place.value.position);

  const settle = (sentences: readonly string[]) => {
    troubles.value = sentences;
  };
  const read = async () => settle(await rows.again());
  const call = () => void called.value++;

  /** Sends edits; whether they are in. A table that is another by now keeps what was written, and says so. */
  async function edit(edits: readonly RecordEdit[], base = head.value?.digest ?? ""): Promise<boolean> {
    if (open.value === null) return false;
    message.value = "Saving.";
    const asked = await send(open.value.file, base, edits);
    if (asked === null) return false;
    if (asked.ok) {
      await read();
      [faults.value, stale.value] = [[], false];
      keepInside();
      return true;
    }
    message.value = "Not saved.";
    stale.value = asked.status === 409;
    if (draft.value === null) settle(asked.sentences);
    else faults.value = asked.sentences;
    return false;
  }

  /** A place among the rows that there are. */
  function keepInside({ position, col } = place.value): void {
    const inside = (at: number, last: number) => Math.max(0, Math.min(at, last));
    place.value = {
      position: inside(position, (head.value?.matching ?? 1) - 1),
      col: inside(col, head.value?.columns.length ?? col),
    };
  }

  async function go(to: RecordsPlace): Promise<void> {
    if (!(await save())) return;
    batch(() => {
      keepInside(to);
      call();
    });
  }

  async function goToRow(row: number, col: number): Promise<void> {
    if (!(await save())) return;
    const forget = only.value === "all" ? undefined : "forgotten";
    batch(() => ([only.value, place.value] = ["all", { position: row - 1, col }]));
    settle(await (forget ? rows.again(forget) : rows.look(row - 1, row - 1)));
    batch(() => {
      keepInside();
      call();
    });
  }

  function leave(): void {
    batch(() => {
      [draft.value, faults.value, stale.value] = [null, [], false];
      call();
    });
  }

  /** Whoever wants it saved while it is being saved waits for the same answer. */
  function save(): Promise<boolean> {
    saving ??= saved().finally(() => {
      saving = null;
    });
    return saving;
  }

  async function saved(): Promise<boolean> {
    const written = draft.value;
    if (written === null) return true;
    if (written.what === "cell" && written.text === written.begun) {
      leave();
      return true;
    }
    if (written.what === "set-aside" && written.text.trim() === "") {
      faults.value = [NO_REASON];
      return false;
    }
    if (!(await edit([editFromDraft(written, head.value?.table ?? 1)], written.base))) return false;
    leave();
    message.value = savedInWords(written, here(), head.value);
    return true;
  }

  /** The number of the table that an address means; its name counts once the file's tables are known. */
  function tableOf({ file, table, named }: RecordsAddress): number {
    const known = head.value?.file === file ? head.value.tables : [];
    return known.findIndex(({ name }) => name === named) + 1 || table;
  }

  async function openAt(address: RecordsAddress | null): Promise<void> {
    const wanted = address === null ? null : { file: address.file, table: tableOf(address) };
    if (wanted === null || wanted.file !== open.value?.file || wanted.table !== open.value.table) {
      if (!(await save())) return;
      batch(() => {
        [open.value, only.value, place.value] = [wanted, "all", START];
        [message.value, troubles.value] = ["", []];
        rows.clear();
      });
      if (wanted !== null) settle(await rows.look(0, 0));
    }
    if (address === null || wanted === null) return;
    if (tableOf(address) !== wanted.table) return openAt({ ...address, table: tableOf(address) });
    if (address.row !== undefined) await goToRow(address.row, address.col ?? 0);
  }

  async function step(what: "undo" | "redo", said: string): Promise<void> {
    if (draft.value === null && (await edit([{ what }]))) message.value = said;
  }

  return {
    tables,
    file: computed(() => open.value?.file ?? null),
    head,
    only,
    place,
    called,
    draft,
    faults,
    stale,
    message,
    troubles,
    unsaved: computed(() => draft.value !== null && draft.value.text !== draft.value.begun),
    canUndo: computed(() => draft.value === null && head.value?.canUndo === true),
    canRedo: computed(() => draft.value === null && head.value?.canRedo === true),
    rowAt: rows.at,
    list: async () => {
      const asked = await api.tables();
      if (asked.ok) tables.value = asked.value;
    },
    open: openAt,
    look: async (first, last) => settle(await rows.look(first, last)),
    show: async (which) => {
      if (!(await save())) return;
      batch(() => ([only.value, place.value] = [which, START]));
      settle(await rows.again("forgotten"));
      const count = head.value?.matching ?? 0;
      message.value =
        which === "all" ? `All ${count} rows.` : `${count} ${count === 1 ? "row" : "rows"} with warnings.`;
    },
    go,
    goToRow,
    begin: () => {
      if (draft.value !== null) return;
      batch(() => {
        message.value = "";
        draft.value = draftAt(place.value.col, here(), head.value);
      });
    },
    write: (text) => {
      if (draft.value !== null) draft.value = { ...draft.value, text };
    },
    leave,
    save,
    bringBack: async () => {
      const row = here();
      if (row?.setAside === undefined) return false;
      if (!(await edit([{ what: "bring-back", table: head.value?.table ?? 1, row: row.row }]))) return false;
      call();
      message.value = `Row ${row.row} takes part again.`;
      return true;
    },
    add: async (cells) => {
      if (!(await edit([{ what: "add", table: head.value?.table ?? 1, cells }]))) return false;
      const count = head.value?.rowCount ?? 0;
      await goToRow(count, 1);
      message.value = `Added as row ${count}.`;
      return true;
    },
    readAgain: async () => {
      await read();
      batch(() => {
        [stale.value, faults.value] = [false, []];
        if (draft.value !== null && head.value !== null) draft.value = draftOver(draft.value, here(), head.value);
      });
    },
    undo: () => step("undo", "Undone, and saved."),
    redo: () => step("redo", "Done again, and saved."),
    writeFile: async () => {
      const [file, base] = [open.value?.file, head.value?.digest];
      if (file === undefined || base === undefined || draft.value !== null) return;
      const asked = await api.write(file, base);
      if (!asked.ok) return settle(asked.sentences);
      await read();
      message.value = `Written into ${file}. The file as it was is kept beside it.`;
    },
    changedOutside: async (file) => {
      if (file !== open.value?.file && file !== `${open.value?.file}.edits.jsonl`) return;
      const before = head.value?.digest;
      await read();
      if (head.value?.digest !== before)
        message.value = `${open.value?.file} was changed by something else; this is how it is now.`;
    },
  };
}
