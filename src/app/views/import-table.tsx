// A table as it would be brought in: under each reading the raw text, and under that what is to be minded.
import type { ImportCell, ImportReading, ImportRow, ImportTable as Table } from "../../core/records/index.ts";
import { unitForDisplay } from "../../core/units/index.ts";
import { importPlaceId } from "./import-place-id.ts";
import { ScrollBox } from "./scroll-box.tsx";

const KINDS = new Map([
  ["text", "words"],
  ["yes-no", "yes or no"],
]);

const counted = (count: number, one: string) => `${count} ${one}${count === 1 ? "" : "s"}`;
const shownOf = ({ rows, rowCount }: Table) =>
  `${rows.length} of the ${rowCount} are shown, the first and those with a warning as far as there is room`;
const ONE_COLUMN =
  " Where one line holds several cells, put tabs, semicolons or commas between them and bring it in again.";

const Head = ({ column, id }: { readonly column: Table["columns"][number]; readonly id: string }) => (
  <th scope="col" id={id} tabIndex={-1}>
    <bdi>{column.name}</bdi>
    <small>
      {KINDS.get(column.kind) ?? column.kind}
      {column.unit !== null ? `, ${unitForDisplay(column.unit)}` : column.kind === "quantity" ? ", no unit" : ""}
    </small>
    {column.warnings.map((sentence) => (
      <small key={sentence} class="warning">
        {sentence}
      </small>
    ))}
  </th>
);

type CellProps = { readonly cell: ImportCell; readonly id: string; readonly words: boolean };
const Cell = ({ cell, id, words }: CellProps) => (
  <td
    id={id}
    tabIndex={-1}
    {...(words ? { "data-words": "yes" } : {})}
    {...(cell.warning === undefined ? {} : { "data-warned": "yes" })}
  >
    <span class="reading">{cell.raw === "" && cell.reading === "nothing measured" ? "" : cell.reading}</span>
    {cell.raw.trim() === "" || cell.raw === cell.reading ? null : <bdi class="raw">{cell.raw}</bdi>}
    {cell.warning === undefined ? null : <small class="warning">{cell.warning.sentence}</small>}
  </td>
);

type RowProps = {
  readonly row: ImportRow;
  readonly table: number;
  readonly columns: Table["columns"];
  /** The row shown before it: where some are left out between, a dashed line says so. */
  readonly after: number;
};
const Row = ({ row, table, columns, after }: RowProps) => (
  <tr {...(row.row > after + 1 ? { "data-gap": "yes" } : {})}>
    <th scope="row" id={importPlaceId({ table, row: row.row })} tabIndex={-1}>
      {row.row}
      {row.warnings.map((sentence) => (
        <small key={sentence} class="warning">
          {sentence}
        </small>
      ))}
    </th>
    {row.cells.map((cell, place) => {
      const id = importPlaceId({ table, row: row.row, col: place + 1 });
      return <Cell key={id} id={id} cell={cell} words={columns[place]?.kind === "text"} />;
    })}
  </tr>
);

/** One table of the file; `number` counts from 1. */
export const ImportTable = ({ table, number }: { readonly table: Table; readonly number: number }) => (
  <section class="import-table" aria-label={`How ${table.name} is read`}>
    <ScrollBox label={`Rows of ${table.name}, raw beside read`}>
      <table aria-rowcount={table.rowCount + 1}>
        <caption>
          <bdi>{table.name}</bdi>: {counted(table.rowCount, "record")}, {counted(table.columns.length, "column")}
          {table.rows.length < table.rowCount ? `; ${shownOf(table)}` : ""}.{table.columns.length === 1 && ONE_COLUMN}
        </caption>
        <thead>
          <tr>
            <th scope="col">row</th>
            {table.columns.map((column, place) => {
              const id = importPlaceId({ table: number, col: place + 1 });
              return <Head key={id} id={id} column={column} />;
            })}
          </tr>
        </thead>
        <tbody>
          {table.rows.map((row, place) => (
            <Row
              key={row.row}
              row={row}
              table={number}
              columns={table.columns}
              after={table.rows[place - 1]?.row ?? 0}
            />
          ))}
        </tbody>
      </table>
    </ScrollBox>
  </section>
);

/** What is no record, with its text and why. */
export const ImportSetAside = ({ reading }: { readonly reading: ImportReading }) =>
  reading.setAsideCount === 0 ? null : (
    <details class="import-set-aside">
      <summary>
        {reading.setAsideCount} {reading.setAsideCount === 1 ? "line is" : "lines are"} no record
      </summary>
      <ul>
        {reading.setAside.map(({ place, sentence, raw }) => (
          <li key={`${place} ${sentence}`}>
            {raw === "" ? null : <bdi class="raw">{raw}</bdi>} {place}: {sentence}
          </li>
        ))}
      </ul>
    </details>
  );
