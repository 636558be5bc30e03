// Where each key leads in the grid (ARIA Authoring Practices, grid pattern). What leads too far ends at the edge.
import type { RecordsPlace } from "../state/records-state.ts";

/** `rows`: how many there are; `columns`: the last one's number; `screen`: rows that fit in view. */
export type GridSize = { readonly rows: number; readonly columns: number; readonly screen: number };

type Move = (from: RecordsPlace, size: GridSize) => RecordsPlace;

const by =
  (rows: number, columns: number): Move =>
  ({ position, col }) => ({ position: position + rows, col: col + columns });

const MOVES = new Map<string, Move>([
  ["ArrowUp", by(-1, 0)],
  ["ArrowDown", by(1, 0)],
  ["ArrowLeft", by(0, -1)],
  ["ArrowRight", by(0, 1)],
  ["PageUp", ({ position, col }, { screen }) => ({ position: position - screen, col })],
  ["PageDown", ({ position, col }, { screen }) => ({ position: position + screen, col })],
  ["Home", ({ position }) => ({ position, col: 0 })],
  ["End", ({ position }, { columns }) => ({ position, col: columns })],
  ["Control+Home", () => ({ position: 0, col: 0 })],
  ["Control+End", (_, { rows, columns }) => ({ position: rows - 1, col: columns })],
]);

/** The place that a key press leads to; null for a key that does not move. */
export function gridMoves(
  event: Pick<KeyboardEvent, "key" | "ctrlKey" | "metaKey" | "altKey" | "shiftKey">,
  from: RecordsPlace,
  size: GridSize,
): RecordsPlace | null {
  if (event.altKey || event.shiftKey) return null;
  const move = MOVES.get(`${event.ctrlKey || event.metaKey ? "Control+" : ""}${event.key}`);
  return move === undefined ? null : move(from, size);
}
