// The table of the record grid: heads that say kind, unit and warnings in words, and the rows that are in view.
import { useMemo, useRef } from "preact/hooks";
import type { RecordsPage } from "../../core/records/index.ts";
import { unitForDisplay } from "../../core/units/index.ts";
import type { RecordsPlace, RecordsState } from "../state/records-state.ts";
import { columnWidths } from "./column-widths.ts";
import { RecordsRow } from "./records-row.tsx";
import { rowsToDraw } from "./rows-to-draw.ts";
import type { RowWindow } from "./use-row-window.ts";

export type RecordsTableProps = {
  readonly state: RecordsState;
  readonly head: RecordsPage;
  readonly view: RowWindow;
  readonly active: RecordsPlace;
  readonly hasSlip: boolean;
  readonly remarks: (row: number | undefined) => readonly string[];
  readonly keyed: (event: KeyboardEvent) => void;
  readonly clicked: (event: MouseEvent) => void;
};

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

const Gap = ({ height, columns }: { readonly height: number; readonly columns: number }) => (
  // biome-ignore lint/a11y/noAriaHiddenOnFocusable: nothing in it takes focus
  <tr class="gap" aria-hidden="true">
    <td colSpan={columns + 1} style={{ height: `${height}px` }} />
  </tr>
);

/** A column on the screen: beside the row's head there is room for it on a telephone too. */
const across = (characters: number): string => `min(${characters}ch, 50vw)`;

/** Widths that stay while rows come and go, and grow when an edit needs it. */
function useWidths({ state, head, view }: RecordsTableProps): readonly string[] {
  const kept = useRef<readonly number[]>([]);
  return useMemo(() => {
    kept.current = columnWidths(head, state.rowAt, view.first, kept.current);
    return kept.current.map(across);
  }, [head.digest]);
}

/** The table as a grid of cells that keys lead through. */
export const RecordsTable = (props: RecordsTableProps) => {
  const { state, head, view, active, hasSlip, remarks, keyed, clicked } = props;
  const widths = useWidths(props);
  return (
    <table
      // biome-ignore lint/a11y/noNoninteractiveElementToInteractiveRole: a table whose cells are reached by keys is a grid (ARIA APG)
      role="grid"
      aria-label={head.file}
      aria-rowcount={head.matching + 1}
      aria-colcount={head.columns.length + 1}
      aria-readonly={head.editable ? undefined : "true"}
      style={{ width: `calc(${widths.join(" + ")})` }}
      onKeyDown={keyed}
      onClick={clicked}
    >
      <colgroup>
        {widths.map((width, key) => (
          <col key={key} style={{ width }} />
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
        {rowsToDraw(view.first, view.last, active.position, head.matching).map((part) =>
          "gap" in part ? (
            <Gap key={`to ${part.before}`} height={part.gap * view.height} columns={head.columns.length} />
          ) : (
            <RecordsRow
              key={part.position}
              row={state.rowAt(part.position)}
              position={part.position}
              columns={head.columns}
              active={part.position === active.position ? active.col : null}
              remarks={remarks(state.rowAt(part.position)?.row)}
              hasSlip={part.position === active.position && hasSlip}
            />
          ),
        )}
      </tbody>
    </table>
  );
};
