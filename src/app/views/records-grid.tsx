// The record grid: what scrolls, the keys that lead through it, and the slip under the cell where the maker is. Focus is never lost: the row that has
// it is drawn wherever it is, and after each save it is back on its cell.
import { useSignal } from "@preact/signals";
import { useEffect, useLayoutEffect, useMemo, useRef } from "preact/hooks";
import type { RecordsPage } from "../../core/records/index.ts";
import type { RecordsPlace, RecordsState } from "../state/records-state.ts";
import { gridMoves } from "./grid-moves.ts";
import { placeSlip } from "./place-slip.ts";
import { SLIP } from "./records-row.tsx";
import { hasNote, RecordsSlip } from "./records-slip.tsx";
import { RecordsTable } from "./records-table.tsx";
import { rowRemarks } from "./row-remarks.ts";
import { useRowWindow } from "./use-row-window.ts";

/** The cell that an event happened in. */
function cellOf(target: EventTarget | null): RecordsPlace | null {
  const cell = target instanceof Element ? target.closest<HTMLElement>("[data-col]") : null;
  const row = cell?.closest<HTMLElement>("[data-position]");
  return cell && row ? { position: Number(row.dataset.position), col: Number(cell.dataset.col) } : null;
}

/** The grid of the open table. */
export const RecordsGrid = ({ state, head }: { readonly state: RecordsState; readonly head: RecordsPage }) => {
  const scroller = useRef<HTMLElement>(null);
  const { view, measure } = useRowWindow(scroller);
  /** The call of focus for which the slip was closed, or asked for. */
  const [closed, wanted] = [useSignal(-1), useSignal(-1)];
  const [{ position, col }, draft, called] = [state.place.value, state.draft.value, state.called.value];
  const active = { position: Math.min(position, Math.max(0, head.matching - 1)), col };
  const row = state.rowAt(active.position);
  const remarks = useMemo(() => rowRemarks(head), [head]);
  const says = hasNote(row, col, remarks(row?.row)) || (col === 0 && wanted.value === called);
  const slip = row !== undefined && (draft !== null || (says && closed.value !== called));

  useEffect(() => void state.look(view.value.first, view.value.last), [view.value, head.matching]);
  // Another choice of rows begins at its first.
  useLayoutEffect(() => {
    if (scroller.current !== null) scroller.current.scrollTop = 0;
  }, [state.only.value]);
  useLayoutEffect(() => {
    if (called > 0 && state.draft.peek() === null)
      scroller.current?.querySelector<HTMLElement>("[data-active]")?.focus();
  }, [called]);
  useLayoutEffect(() => {
    if (slip && scroller.current !== null) placeSlip(scroller.current);
  }, [slip, draft === null, called, state.faults.value, head.digest]);

  /** A row that is set aside says why, and can be brought back; all else opens to be written. */
  function open(): void {
    if (col > 0 || row?.setAside === undefined) state.begin();
    else {
      [closed.value, wanted.value] = [-1, called];
      scroller.current?.querySelector<HTMLElement>(".slip button")?.focus();
    }
  }
  function keyed(event: KeyboardEvent): void {
    if (cellOf(event.target) === null) return;
    const size = { rows: head.matching, columns: head.columns.length, screen: view.value.screen };
    const to = gridMoves(event, active, size);
    if (event.key === "Escape") {
      if (draft !== null) state.leave();
      closed.value = state.called.peek();
    } else if (event.key === "F2" || event.key === "Enter") {
      event.preventDefault();
      open();
    } else if (to !== null) {
      event.preventDefault();
      void state.go(to);
    }
  }
  async function clicked(event: MouseEvent): Promise<void> {
    const cell = cellOf(event.target);
    if (cell === null) return;
    const again = cell.position === active.position && cell.col === col && called > 0;
    if (again && draft === null && cell.col > 0) return state.begin();
    await state.go(cell);
    if (cell.col === 0) wanted.value = state.called.peek();
  }
  function leftBy(event: KeyboardEvent): void {
    if (event.key !== "Escape") return;
    state.leave();
    closed.value = state.called.peek();
  }

  return (
    <section class="records-grid" ref={scroller} onScroll={measure} aria-label={`Records of ${head.file}`}>
      <RecordsTable
        state={state}
        head={head}
        view={view.value}
        active={active}
        hasSlip={slip}
        remarks={remarks}
        keyed={keyed}
        clicked={(event) => void clicked(event)}
      />
      {slip && row !== undefined && (
        // biome-ignore lint/a11y/useSemanticElements: a fieldset is for fields, and most slips are words
        <div class="slip" id={SLIP} role="group" aria-label="About this cell" onKeyDown={leftBy}>
          <RecordsSlip state={state} row={row} remarks={remarks(row.row)} />
        </div>
      )}
    </section>
  );
};
