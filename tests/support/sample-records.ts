// A server of one record table, in memory: enough of the real one for the page's tests. Its digest is the number of edits.
import type { RecordsApi } from "../../src/app/state/records-api.ts";
import type { RecordEdit, RecordsCell, RecordsPage, RecordsRow } from "../../src/core/records/index.ts";

type Raw = { readonly cells: readonly string[]; readonly setAside?: string; readonly added?: true };

const WORDS = "This cell is not a number that can be read.";
const COLUMNS = [
  { name: "Top ID", unit: null, kind: "text" },
  { name: "Thickness", unit: "mm", kind: "quantity", meaning: "mean of five readings, before planing" },
  { name: "Remarks", unit: null, kind: "text" },
] as const;

/** Thickness of every row is its number in tenths; the third is not readable. */
const firstRows = (count: number): readonly Raw[] =>
  Array.from({ length: count }, (_, at) => ({
    cells: [`T-${at + 1}`, at === 2 ? "2.3.1" : `${(at + 10) / 10}`, at === 1 ? "split while drying" : ""],
  }));

function cell(raw: string, col: number, before: string | undefined): RecordsCell {
  const unread = col === 1 && raw !== "" && !Number.isFinite(Number(raw));
  return {
    raw,
    reading: raw === "" ? "nothing measured" : unread ? "not readable" : col === 1 ? `${raw} mm` : raw,
    ...(unread ? { warning: { code: "unreadable-number", sentence: WORDS } } : {}),
    ...(before === undefined || before === raw ? {} : { before }),
  };
}

/** The api, and what it was asked. */
export function sampleRecords(count = 30) {
  const history: (readonly Raw[])[] = [firstRows(count)];
  const server = { at: 0, version: 0, asked: [] as string[], ids: [] as string[], away: false, written: 0 };
  const rows = () => history[server.at] ?? [];
  const changed = (edit: RecordEdit): readonly Raw[] =>
    edit.what === "add"
      ? [...rows(), { cells: COLUMNS.map((_, col) => edit.cells[col] ?? ""), added: true }]
      : rows().map((row, at) => {
          if (!("row" in edit) || at + 1 !== edit.row) return row;
          if (edit.what === "set-aside") return { ...row, setAside: edit.reason };
          if (edit.what === "bring-back") return { cells: row.cells };
          return { ...row, cells: row.cells.map((raw, col) => (col + 1 === edit.col ? edit.after : raw)) };
        });
  function shown(row: Raw, at: number): RecordsRow {
    return {
      row: at + 1,
      record: at + 2,
      ...(row.setAside === undefined ? {} : { setAside: row.setAside }),
      ...(row.added ? { added: true } : {}),
      cells: row.cells.map((raw, col) => cell(raw, col, row.added ? undefined : history[0]?.[at]?.cells[col])),
    };
  }
  function page(from: number, size: number, only: "all" | "warned", table = 1): RecordsPage {
    const all = rows().map((row, at) => ({ row, at }));
    const warned = all.filter(({ row }) => Number.isNaN(Number(row.cells[1]))).map(({ row, at }) => shown(row, at));
    const matching = only === "all" ? all : all.filter(({ row }) => Number.isNaN(Number(row.cells[1])));
    return {
      file: "records/tops.csv",
      digest: String(server.version),
      editable: true,
      canSetAside: true,
      table,
      tables: [
        { name: "tops", rows: all.length, columns: 3 },
        { name: "offcuts", rows: 1, columns: 3 },
      ],
      columns: COLUMNS.map((column, col) => ({ ...column, warnings: col === 1 ? warned.length : 0 })),
      rowCount: all.length,
      matching: matching.length,
      from,
      rows: matching.slice(from - 1, from - 1 + size).map(({ row, at }) => shown(row, at)),
      warnings: warned.map(({ row }) => ({ row, col: 2, code: "unreadable-number", sentence: WORDS })),
      warningCount: warned.length,
      canUndo: server.at > 0,
      canRedo: server.at < history.length - 1,
      edits: server.at,
      problems: [],
    };
  }
  const gone = { ok: false, status: 0, sentences: ["The program does not answer."] } as const;
  const stale = { ok: false, status: 409, sentences: ["The table was changed by something else."] } as const;
  const api: RecordsApi = {
    tables: async () => ({ ok: true, value: [{ file: "records/tops.csv", tables: 1, rows: rows().length }] }),
    page: async (file, { from, count: size, only, table }) => {
      server.asked.push(`${file} ${only} ${from}`);
      return server.away ? gone : { ok: true, value: page(from, size, only, table) };
    },
    edit: async (_, base, id, edits) => {
      server.ids.push(id);
      if (server.away) return gone;
      if (base !== String(server.version)) return stale;
      for (const edit of edits) {
        if (edit.what === "undo") server.at--;
        else if (edit.what === "redo") server.at++;
        else {
          history.splice(server.at + 1, history.length, changed(edit));
          server.at++;
        }
      }
      server.version++;
      return { ok: true, value: page(1, 200, "all") };
    },
    write: async () => {
      server.written++;
      return { ok: true, value: page(1, 200, "all") };
    },
  };
  /** What another program would do: a cell holds something else. */
  const another = (row: number, col: number, after: string) => {
    history.push(changed({ what: "cell", table: 1, row, col, before: "", after }));
    server.at = history.length - 1;
    server.version++;
  };
  return { api, server, rows, another };
}
