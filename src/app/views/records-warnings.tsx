// Every warning of a file in a list, each leading to its cell: the way to them for whoever does not want to look for marks in a grid.
import { useSignal } from "@preact/signals";
import type { RecordsPage, RecordsWarning } from "../../core/records/index.ts";

const SHOWN = 50;

const whereOf = (warning: RecordsWarning, head: RecordsPage): string =>
  [
    warning.row === undefined ? "" : `row ${warning.row}`,
    warning.col === undefined ? "" : (head.columns[warning.col - 1]?.name ?? `column ${warning.col}`),
  ]
    .filter(Boolean)
    .join(", ") || "the whole file";

/** The warnings of the table that is shown. */
export const RecordsWarnings = ({
  head,
  goTo,
}: {
  readonly head: RecordsPage;
  readonly goTo: (row: number, col: number) => void;
}) => {
  const most = useSignal(SHOWN);
  const ofTable = head.warnings.filter(({ table, row, col }) =>
    row === undefined && col === undefined ? true : (table ?? 1) === head.table,
  );
  if (head.warningCount === 0) return null;
  return (
    <details class="records-warnings">
      <summary>
        {head.warningCount} {head.warningCount === 1 ? "warning" : "warnings"}
      </summary>
      <ul>
        {ofTable.slice(0, most.value).map((warning) => {
          const { row, col, code, sentence } = warning;
          const where = whereOf(warning, head);
          return (
            <li key={`${row} ${col} ${code}`}>
              {row === undefined ? (
                <span class="where">{where}</span>
              ) : (
                <button type="button" onClick={() => goTo(row, col ?? 0)}>
                  <bdi>{where}</bdi>
                </button>
              )}{" "}
              {sentence}
            </li>
          );
        })}
      </ul>
      {ofTable.length > most.value && (
        <button type="button" onClick={() => (most.value += 10 * SHOWN)}>
          Show {Math.min(10 * SHOWN, ofTable.length - most.value)} more
        </button>
      )}
      {head.warnings.length < head.warningCount && (
        <p>The first {head.warnings.length} are listed; “Only rows with warnings” shows them all.</p>
      )}
    </details>
  );
};
