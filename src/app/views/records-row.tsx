// One row of the record grid: its number and what became of it, then each cell's reading above its raw text.
import { useMemo } from "preact/hooks";
import type { RecordsCell, RecordsPage, RecordsRow as Row } from "../../core/records/index.ts";
import { isInReading } from "./is-in-reading.ts";

export type RecordsRowProps = {
  /** Undefined until it has been read. */
  readonly row: Row | undefined;
  readonly position: number;
  readonly columns: RecordsPage["columns"];
  /** The cell of this row that the keyboard is at: 0 is the row's own head. */
  readonly active: number | null;
  /** Warnings about the row as a whole. */
  readonly remarks: readonly string[];
  /** Whether a slip lies under the active cell and says more of it. */
  readonly hasSlip: boolean;
};

/** Where the slip's words are, for whoever hears the cell. */
export const SLIP = "records-slip";

/** What stands beneath a reading: the raw text where it differs, and what there is to know of the cell, in words. */
const Beneath = ({ cell, unit }: { readonly cell: RecordsCell; readonly unit: string | null }) => (
  <span class="beneath">
    {isInReading(cell, unit) ? null : <bdi>{cell.raw}</bdi>}
    {cell.warning === undefined ? null : <em>warning</em>}
    {cell.before === undefined ? null : <em>edited</em>}
  </span>
);

const Reading = ({ cell }: { readonly cell: RecordsCell | undefined }) =>
  cell === undefined ? (
    <span class="reading" />
  ) : cell.raw === "" && cell.warning === undefined ? (
    <span class="reading">
      <span class="for-readers">{cell.reading}</span>
    </span>
  ) : (
    <bdi class="reading">{cell.reading}</bdi>
  );

const became = (row: Row): string =>
  [row.setAside === undefined ? "" : "set aside", row.added ? "added" : ""].filter(Boolean).join(", ");

const RowHead = ({ row, position, remarks }: Pick<RecordsRowProps, "row" | "position" | "remarks">) =>
  row === undefined ? (
    <span class="reading">{position + 1}, being read</span>
  ) : (
    <>
      <span class="reading">
        {row.row}
        {became(row) === "" ? "" : ` ${became(row)}`}
      </span>
      <span class="beneath">
        {remarks.length > 0 && <em>warning</em>}
        {row.setAside}
      </span>
    </>
  );

/** A row; drawn anew only when something of it has changed. */
export const RecordsRow = ({ row, position, columns, active, remarks, hasSlip }: RecordsRowProps) =>
  useMemo(() => {
    const at = (col: number) => ({
      "data-col": col,
      tabIndex: active === col ? 0 : -1,
      ...(active === col ? { "data-active": "yes", ...(hasSlip ? { "aria-describedby": SLIP } : {}) } : {}),
    });
    return (
      <tr
        data-position={position}
        aria-rowindex={position + 2}
        {...(row?.setAside === undefined ? {} : { "data-aside": "yes" })}
      >
        <th scope="row" {...at(0)}>
          <RowHead row={row} position={position} remarks={remarks} />
        </th>
        {columns.map(({ unit }, place) => {
          const cell = row?.cells[place];
          return (
            <td key={place} {...at(place + 1)} {...(cell?.warning === undefined ? {} : { "data-warned": "yes" })}>
              <Reading cell={cell} />
              {cell === undefined ? <span class="beneath" /> : <Beneath cell={cell} unit={unit} />}
            </td>
          );
        })}
      </tr>
    );
  }, [row, position, columns, active, remarks, hasSlip]);
