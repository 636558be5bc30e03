// The record grid: as many rows as are in view, and the one the keyboard is at wherever it is, so that focus is never lost.
import { useSignal } from "@preact/signals";
import { useEffect, useLayoutEffect, useMemo, useRef } from "preact/hooks";
import type { RecordsPage } from "../../core/records/index.ts";
import { unitForDisplay } from "../../core/units/index.ts";
import type { RecordsState } from "../state/records-state.ts";
import { columnWidths } from "./column-widths.ts";
import { gridMoves } from "./grid-moves.ts";
import { RecordsRow, SLIP } from "./records-row.tsx";
import { hasNote, RecordsSlip } from "./records-slip.tsx";
import { rowsToDraw } from "./rows-to-draw.ts";

/** Rows drawn before and behind those in view. */
const BEYOND = 12;

const ColumnHead = ({ column }: { readonly column: RecordsPage["columns"][number] }) => (
  <th scope="col">
    <bdi>{column.name}</bdi>
    <small>
      {column.kind}
      {column.unit === null || column.unit === "" || column.unit === "1" ? "" : `, ${unitForDisplay(column.unit)}`}
    </small>
    <small>{column.warnings === 0 ? "" : `${column.warnings} ${column.warnings === 1 ? "warning" : "warnings"}`}</small>
  </th>
);

const Gap = ({
  rows,
  height,
  columns,
}: {
  readonly rows: number;
  readonly height: number;
  readonly columns: number;
}) =>
  rows === 0 ? null : (
    // biome-ignore lint/a11y/noAriaHiddenOnFocusable: nothing in it takes focus
    <tr class="gap" aria-hidden="true">
      <td colSpan={columns + 1} style={{ height: `${rows * height}px` }} />
    </tr>
  );

const NONE: readonly string[] = [];

/** Sentences about a row as a whole, by its number. */
function remarksByRow({ warnings, table: shown }: RecordsPage): ReadonlyMap<number, readonly string[]> {
  const found = new Map<number, readonly string[]>();
  for (const { table = 1, row, col, sentence } of warnings)
    if (table === shown && row !== undefined && col === undefined)
      found.set(row, [...(found.get(row) ?? NONE), sentence]);
  return found;
}

/** The cell that an event happened in. */
function cellOf(target: EventTarget | null): { readonly position: number; readonly col: number } | null {
  const cell = target instanceof Element ? target.closest<HTMLElement>("[data-col]") : null;
  const row = cell?.closest<HTMLElement>("[data-position]");
  return cell && row ? { position: Number(row.dataset.position), col: Number(cell.dataset.col) } : null;
}

/** Puts the slip under the active cell, inside what is in view sideways. */
function placeSlip(scroller: HTMLElement): void {
  const [cell, slip] = [
    scroller.querySelector<HTMLElement>("[data-active]"),
    scroller.querySelector<HTMLElement>(".slip"),
  ];
  if (cell === null || slip === null) return;
  const [box, frame] = [cell.getBoundingClientRect(), scroller.getBoundingClientRect()];
  const room = Math.max(0, scroller.clientWidth - slip.offsetWidth);
  const left = Math.min(Math.max(0, box.left - frame.left), room);
  slip.style.insetInlineStart = `${left + scroller.scrollLeft}px`;
  slip.style.insetBlockStart = `${box.bottom - frame.top + scroller.scrollTop}px`;
}

/** The grid of the open table. */
export const RecordsGrid = ({ state, head }: { readonly state: RecordsState; readonly head: RecordsPage }) => {
  const scroller = useRef<HTMLElement>(null);
  const view = useSignal({ first: 0, last: 2 * BEYOND, screen: 1 });
  const height = useSignal(48);
  const dismissed = useSignal(-1);
  const asked = useSignal(-1);
  const [place, draft, called] = [state.place.value, state.draft.value, state.called.value];
  const active = Math.min(place.position, Math.max(0, head.matching - 1));
  const row = state.rowAt(active);
  const remarks = useMemo(() => remarksByRow(head), [head]);
  const ofRow = (row && remarks.get(row.row)) ?? NONE;
  const slip =
    row !== undefined &&
    (draft !== null ||
      (dismissed.value !== called && (hasNote(row, place.col, ofRow) || (place.col === 0 && asked.value === called))));

  function measure(): void {
    const frame = scroller.current;
    if (frame === null) return;
    const first = frame.querySelector("tr[data-position]")?.getBoundingClientRect().height;
    if (first && Math.abs(first - height.value) > 0.01) height.value = first;
    const screen = Math.max(1, Math.floor(frame.clientHeight / height.value) - 2);
    const top = Math.floor(frame.scrollTop / height.value / 4) * 4;
    const next = { first: Math.max(0, top - BEYOND), last: top + screen + 2 + BEYOND, screen };
    if (next.first !== view.value.first || next.last !== view.value.last) view.value = next;
  }
  useLayoutEffect(() => {
    const watcher = new ResizeObserver(measure);
    if (scroller.current !== null) watcher.observe(scroller.current);
    return () => watcher.disconnect();
  }, []);
  useLayoutEffect(measure);
  useEffect(() => void state.look(view.value.first, view.value.last), [view.value, head.matching]);
  useLayoutEffect(() => {
    if (called > 0 && state.draft.peek() === null)
      scroller.current?.querySelector<HTMLElement>("[data-active]")?.focus();
  }, [called]);
  useLayoutEffect(() => {
    if (scroller.current === null) return;
    placeSlip(scroller.current);
    if (slip) scroller.current.querySelector(".slip")?.scrollIntoView({ block: "nearest", inline: "nearest" });
  }, [slip, draft === null, called, state.faults.value, head.digest]);

  const widths = useRef<readonly number[]>([]);
  useMemo(() => {
    widths.current = columnWidths(head, state.rowAt, view.value.first, widths.current);
  }, [head.digest, head.columns.length]);

  const keyed = (event: KeyboardEvent) => {
    if (cellOf(event.target) === null) return;
    if (draft !== null) return event.key === "Escape" ? state.leave() : undefined;
    if (event.key === "Escape") dismissed.value = called;
    else if (event.key === "F2" || event.key === "Enter") {
      event.preventDefault();
      openSlip();
    } else {
      const size = { rows: head.matching, columns: head.columns.length, screen: view.value.screen };
      const to = gridMoves(event, { position: active, col: place.col }, size);
      if (to === null) return;
      event.preventDefault();
      void state.go(to);
    }
  };
  /** A row that is set aside says why, and can be brought back; all else opens to be written. */
  const openSlip = () => {
    if (place.col === 0 && row?.setAside !== undefined)
      scroller.current?.querySelector<HTMLElement>(".slip button")?.focus();
    else state.begin();
  };
  const clicked = async (event: MouseEvent) => {
    const cell = cellOf(event.target);
    if (cell === null) return;
    const again = cell.position === place.position && cell.col === place.col && called > 0;
    if (again && draft === null && cell.col > 0) return state.begin();
    await state.go(cell);
    if (cell.col === 0) asked.value = state.called.peek();
  };

  return (
    <section class="records-grid" ref={scroller} onScroll={measure} aria-label={`Records of ${head.file}`}>
      <table
        // biome-ignore lint/a11y/noNoninteractiveElementToInteractiveRole: a table whose cells are reached by keys is a grid (ARIA APG)
        role="grid"
        aria-label={head.file}
        aria-rowcount={head.matching + 1}
        aria-colcount={head.columns.length + 1}
        aria-readonly={head.editable ? undefined : "true"}
        style={{ width: `${widths.current.reduce((sum, each) => sum + each, 0)}ch` }}
        onKeyDown={keyed}
        onClick={(event) => void clicked(event)}
      >
        <colgroup>
          {widths.current.map((width, key) => (
            <col key={key} style={{ width: `${width}ch` }} />
          ))}
        </colgroup>
        <thead>
          <tr aria-rowindex={1}>
            <th scope="col">row</th>
            {head.columns.map((column) => (
              <ColumnHead key={column.name} column={column} />
            ))}
          </tr>
        </thead>
        <tbody>
          {rowsToDraw(view.value.first, view.value.last, active, head.matching).map((part) =>
            "gap" in part ? (
              <Gap key={`to ${part.before}`} rows={part.gap} height={height.value} columns={head.columns.length} />
            ) : (
              <RecordsRow
                key={part.position}
                row={state.rowAt(part.position)}
                position={part.position}
                columns={head.columns}
                active={part.position === active ? place.col : null}
                remarks={remarks.get(state.rowAt(part.position)?.row ?? 0) ?? NONE}
                hasSlip={part.position === active && slip}
              />
            ),
          )}
        </tbody>
      </table>
      {slip && row !== undefined && (
        // biome-ignore lint/a11y/useSemanticElements: a fieldset is for fields, and most slips are words
        <div
          class="slip"
          id={SLIP}
          role="group"
          aria-label="About this cell"
          onKeyDown={(event) => {
            if (event.key !== "Escape") return;
            state.leave();
            dismissed.value = state.called.peek();
          }}
        >
          <RecordsSlip state={state} row={row} remarks={ofRow} />
        </div>
      )}
    </section>
  );
};
