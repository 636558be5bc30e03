// The way back from a number: a list of links that open in place, down to the raw cell in the raw file.
import { useContext } from "preact/hooks";
import type { TraceCell, TraceStep } from "../../core/base/index.ts";
import { RecordsLinks } from "./records-links.ts";
import { ScrollBox } from "./scroll-box.tsx";

const MOST = 60;

/** What all cells have in common is said once, above them. */
const common = (cells: readonly TraceCell[], of: "file" | "column"): string | null => {
  const [first] = cells;
  return first !== undefined && cells.every((cell) => cell[of] === first[of]) ? first[of] : null;
};

/** What an edit did to a cell: its raw text in the file, or that the record is not in the file yet. */
const Edited = ({ cell: { before } }: { readonly cell: TraceCell }) => {
  if (before === undefined) return null;
  return before === null ? (
    <small>added by an edit</small>
  ) : (
    <small>edited; the file has {before === "" ? "nothing" : <bdi class="raw">{before}</bdi>}</small>
  );
};

const CellTable = ({ cells }: { readonly cells: readonly TraceCell[] }) => {
  const [file, column] = [common(cells, "file"), common(cells, "column")];
  const link = useContext(RecordsLinks);
  return (
    <ScrollBox label="Raw cells">
      <table>
        <caption>
          {cells.length > MOST ? `The first ${MOST} of ${cells.length} cells` : "Cells"}
          {column === null ? "" : ` of ${column}`}, as they stand in {file ?? "the files"}
        </caption>
        <thead>
          <tr>
            {file === null && <th scope="col">file</th>}
            <th scope="col">row</th>
            {column === null && <th scope="col">column</th>}
            <th scope="col">raw</th>
            <th scope="col">read as</th>
          </tr>
        </thead>
        <tbody>
          {cells.slice(0, MOST).map((cell, key) => (
            <tr key={key}>
              {file === null && <td>{cell.file}</td>}
              <td>
                {link === null ? (
                  cell.row
                ) : (
                  <a href={link({ file: cell.file, table: 1, named: cell.table, row: cell.row, col: cell.col })}>
                    {cell.row}
                  </a>
                )}
              </td>
              {column === null && (
                <td>
                  <bdi>{cell.column}</bdi>
                </td>
              )}
              <td>
                <bdi class="raw">{cell.raw}</bdi>
                <Edited cell={cell} />
              </td>
              <td>{cell.reading}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </ScrollBox>
  );
};

const Step = ({ step }: { readonly step: TraceStep }) => {
  const more = (step.formula ?? step.rows?.length ?? step.cells?.length) !== undefined;
  if (!more) return <li>{step.says}</li>;
  return (
    <li>
      <details>
        <summary>{step.says}</summary>
        {step.formula === undefined ? null : <code>{step.formula}</code>}
        {step.rows === undefined || step.rows.length === 0 ? null : (
          <p>{step.rows.map((row) => row.piece).join(", ")}</p>
        )}
        {step.cells === undefined || step.cells.length === 0 ? null : <CellTable cells={step.cells} />}
      </details>
    </li>
  );
};

/** The steps of a trace. */
export const TraceList = ({ steps }: { readonly steps: readonly TraceStep[] }) => (
  <details class="trace-list">
    <summary>Where this comes from</summary>
    <ol>
      {steps.map((step, key) => (
        <Step key={key} step={step} />
      ))}
    </ol>
  </details>
);
