// A record table: raw text beside its reading, kinds, units and warnings as words in the column heads.
import { useSignal } from "@preact/signals";
import { useContext } from "preact/hooks";
import type { GridCell, GridColumn, View } from "../../core/base/index.ts";
import { unitForDisplay } from "../../core/units/index.ts";
import { RecordsLinks } from "./records-links.ts";
import { ScrollBox } from "./scroll-box.tsx";

const PAGE = 30;

const Head = ({ column }: { readonly column: GridColumn }) => (
  <th scope="col">
    <bdi>{column.header}</bdi>
    <small>
      {column.kind}
      {column.unit === "" || column.unit === "1" ? "" : `, ${unitForDisplay(column.unit)}`}
      {column.uncertainty === undefined ? "" : `, ${column.uncertainty}`}
      {column.warnings === 0 ? "" : `, ${column.warnings} ${column.warnings === 1 ? "warning" : "warnings"}`}
    </small>
    {column.formula === undefined ? null : (
      <small>
        <code>{column.formula}</code>
      </small>
    )}
  </th>
);

const Cell = ({ cell, words }: { readonly cell: GridCell | undefined; readonly words: boolean }) => (
  <td {...(words ? { "data-words": "yes" } : {})} {...(cell?.warning === undefined ? {} : { "data-warned": "yes" })}>
    <span class="reading">{cell?.reading}</span>
    {cell === undefined || cell.raw === cell.reading || cell.raw === "" ? null : <bdi class="raw">{cell.raw}</bdi>}
    {cell?.warning === undefined ? null : (
      <details class="warning">
        <summary>warning</summary>
        <span>{cell.warning}</span>
      </details>
    )}
  </td>
);

type Table = Extract<View, { kind: "table" }>;

/** A table with the rows that have been asked for; a row set aside says why. */
export const TableView = ({ table, whole }: { readonly table: Table; readonly whole: boolean }) => {
  const most = useSignal(whole ? table.rows.length : PAGE);
  const more = table.rows.length - most.value;
  const aside = table.rows.some((row) => row.setAside !== undefined);
  const link = useContext(RecordsLinks);
  return (
    <div class="table-view">
      {table.notes.length > 0 && (
        <ul class="notes">
          {table.notes.map((note) => (
            <li key={note}>{note}</li>
          ))}
        </ul>
      )}
      {link !== null && table.files !== undefined && (
        <p class="edit">
          {table.files.map((file) => (
            <a key={file} href={link({ file, table: 1 })}>
              Edit these records: <bdi>{file}</bdi>
            </a>
          ))}
        </p>
      )}
      <details open={!whole && table.rowCount <= PAGE}>
        <summary>
          {table.caption}: {table.rowCount} {table.rowCount === 1 ? "record" : "records"}, {table.columns.length}{" "}
          {table.columns.length === 1 ? "column" : "columns"}
        </summary>
        <ScrollBox label={`Records of ${table.caption}`}>
          <table aria-rowcount={table.rowCount + 1}>
            <caption class="for-readers">{table.caption}</caption>
            <thead>
              <tr>
                <th scope="col">piece</th>
                {aside && <th scope="col">set aside</th>}
                {table.columns.map((column) => (
                  <Head key={column.name} column={column} />
                ))}
              </tr>
            </thead>
            <tbody>
              {table.rows.slice(0, most.value).map((row) => (
                <tr
                  key={row.row}
                  aria-rowindex={row.row + 1}
                  {...(row.setAside === undefined ? {} : { "data-aside": "yes" })}
                >
                  <th scope="row">
                    <bdi>{row.piece}</bdi>
                  </th>
                  {aside && <td>{row.setAside}</td>}
                  {table.columns.map((column, key) => (
                    <Cell key={column.name} cell={row.cells[key]} words={column.kind === "words"} />
                  ))}
                </tr>
              ))}
            </tbody>
          </table>
        </ScrollBox>
        {more > 0 && (
          <button type="button" onClick={() => (most.value += 200)}>
            Show {Math.min(200, more)} more records
          </button>
        )}
      </details>
    </div>
  );
};
