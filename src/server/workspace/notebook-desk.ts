// One graph a notebook stays open, so that a preview recomputes only what the edit touched. Requests of one notebook take turns.
import type { TraceStep } from "../../core/base/index.ts";
import { toSi, unitFromCode } from "../../core/units/index.ts";
import type { NotebookEngine, NotebookResult } from "../../notebook/engine/index.ts";
import { createNotebookEngine } from "../../notebook/engine/index.ts";
import type { DialPositions } from "./workspace.ts";

type Seat = { readonly engine: NotebookEngine; turned: boolean; turn: Promise<unknown> };

export type NotebookDesk = {
  readonly result: (file: string, text: string, dials: DialPositions) => Promise<NotebookResult>;
  readonly trace: (file: string, text: string, entry: string) => Promise<readonly TraceStep[]>;
  /** Forgets what is open: the records have changed. */
  readonly clear: () => void;
};

const OPEN_AT_ONCE = 8;

/** A desk over files that are read with `readFile`. */
export function notebookDesk(readFile: (path: string) => Promise<Uint8Array | null>, version: string): NotebookDesk {
  const seats = new Map<string, Seat>();

  function seatOf(file: string): Seat {
    const seat = seats.get(file) ?? {
      engine: createNotebookEngine({ readFile, schedule: setImmediate, asOf: null, version }),
      turned: false,
      turn: Promise.resolve(),
    };
    seats.delete(file);
    seats.set(file, seat);
    for (const [oldest, old] of seats) {
      if (seats.size <= OPEN_AT_ONCE) break;
      leave(oldest, old);
    }
    return seat;
  }

  function leave(file: string, seat: Seat): void {
    seats.delete(file);
    void seat.turn.then(() => seat.engine.dispose());
  }

  function inTurn<T>(file: string, work: (seat: Seat) => Promise<T>): Promise<T> {
    const known = seats.get(file);
    if (known?.turned) leave(file, known);
    const seat = seatOf(file);
    const next = seat.turn.then(() => work(seat));
    seat.turn = next.catch(() => undefined);
    return next;
  }

  async function computed(seat: Seat, file: string, text: string): Promise<NotebookResult> {
    seat.engine.update(text, file);
    await seat.engine.settled();
    return seat.engine.result();
  }

  return {
    result: (file, text, dials) =>
      inTurn(file, async (seat) => {
        const first = await computed(seat, file, text);
        if (dials.size === 0) return first;
        seat.turned = true;
        for (const { view } of first.entries) {
          const value = view.kind === "slider" ? dials.get(view.name) : undefined;
          if (view.kind === "slider" && value !== undefined)
            seat.engine.setDial(view.name, toSi(value, unitFromCode(view.unit)));
        }
        await seat.engine.settled();
        return seat.engine.result();
      }),
    trace: (file, text, entry) =>
      inTurn(file, async (seat) => {
        await computed(seat, file, text);
        return seat.engine.trace(entry).steps;
      }),
    clear: () => {
      for (const [file, seat] of [...seats]) leave(file, seat);
    },
  };
}
