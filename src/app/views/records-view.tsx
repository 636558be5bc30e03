// A record table as a working place: what there is to know of it, its warnings, its grid, and what can be done with it.
import type { RecordsPage } from "../../core/records/index.ts";
import { recordsAddress } from "../state/records-address.ts";
import type { RecordsState } from "../state/records-state.ts";
import { RecordsAddForm } from "./records-add-form.tsx";
import { RecordsGrid } from "./records-grid.tsx";
import { RecordsWarnings } from "./records-warnings.tsx";

const counted = (count: number, one: string): string =>
  `${count.toLocaleString("en-GB")} ${one}${count === 1 ? "" : "s"}`;

const Tables = ({ head }: { readonly head: RecordsPage }) =>
  head.tables.length < 2 ? null : (
    <nav aria-label={`Tables of ${head.file}`}>
      <ul>
        {head.tables.map((table, place) => (
          <li key={table.name}>
            <a
              href={recordsAddress({ file: head.file, table: place + 1 })}
              {...(place + 1 === head.table ? { "aria-current": "page" as const } : {})}
            >
              <bdi>{table.name}</bdi>
            </a>{" "}
            {counted(table.rows, "record")}
          </li>
        ))}
      </ul>
    </nav>
  );

/** What has been changed here and is not in the file, and the button that writes it there. */
const WriteFile = ({ head, write }: { readonly head: RecordsPage; readonly write: () => void }) =>
  head.edits === 0 || !head.editable ? null : (
    <div class="write">
      <p id="records-write">
        {counted(head.edits, "edit")} {head.edits === 1 ? "is" : "are"} kept beside the file, and the file is as it was.
        Writing puts changed and added records into {head.file}, leaves every other byte of it alone, and keeps the old
        file beside it under its date.
      </p>
      <button type="button" aria-describedby="records-write" onClick={write}>
        Write into the file
      </button>
    </div>
  );

const Problems = ({ head }: { readonly head: RecordsPage }) =>
  head.problems.length === 0 ? null : (
    <ul class="problems">
      {head.problems.map(({ code, sentence, line }) => (
        <li key={`${code} ${line}`}>
          {line === undefined ? "" : `Line ${line} of the record of edits: `}
          {sentence}
        </li>
      ))}
    </ul>
  );

/** The open table. */
export const RecordsView = ({ state }: { readonly state: RecordsState }) => {
  const head = state.head.value;
  if (head === null)
    return (
      <section class="records-view" aria-label="Records">
        <h1>{state.file.value}</h1>
        {state.troubles.value.length === 0 && <p>Reading the records.</p>}
      </section>
    );
  const choose = async (box: HTMLInputElement) => {
    await state.show(box.checked ? "warned" : "all");
    // What could not be saved first has kept the rows as they were.
    box.checked = state.only.value === "warned";
  };
  return (
    <section class="records-view" aria-labelledby="records">
      <header>
        <h1 id="records" tabIndex={-1}>
          <bdi>{head.file}</bdi>
        </h1>
        <p>
          {counted(head.rowCount, "record")}, {counted(head.columns.length, "column")}.{" "}
          {head.editable && (
            <>
              <kbd>Enter</kbd> or a second click opens a cell; on a row’s number it sets the row aside.
            </>
          )}
        </p>
      </header>
      <Problems head={head} />
      <Tables head={head} />
      <RecordsWarnings head={head} goTo={(row, col) => void state.goToRow(row, col)} />
      <label class="only">
        <input
          type="checkbox"
          checked={state.only.value === "warned"}
          onChange={(event) => void choose(event.currentTarget)}
        />
        Only rows with warnings
      </label>
      {head.matching === 0 ? (
        <p class="none">{state.only.value === "warned" ? "No row has a warning." : "There are no records yet."}</p>
      ) : (
        <RecordsGrid key={`${head.file} ${head.table}`} state={state} head={head} />
      )}
      {head.editable && <RecordsAddForm key={head.file} head={head} add={state.add} />}
      <WriteFile head={head} write={() => void state.writeFile()} />
    </section>
  );
};
