// A slip of paper under the cell where the maker is: what there is to know of it, or what is being written there.
import type { ComponentChildren } from "preact";
import { useLayoutEffect, useRef } from "preact/hooks";
import type { RecordsCell, RecordsPage, RecordsRow } from "../../core/records/index.ts";
import type { RecordsDraft } from "../state/records-draft.ts";
import type { RecordsState } from "../state/records-state.ts";
import { SLIP } from "./records-row.tsx";

export type RecordsSlipProps = {
  readonly state: RecordsState;
  readonly row: RecordsRow;
  /** Warnings about the row as a whole. */
  readonly remarks: readonly string[];
};

/** Marks stand in the text, for whoever copies or hears it. */
const Quoted = ({ raw }: { readonly raw: string }) => (
  <>
    “<bdi class="raw">{raw}</bdi>”
  </>
);

/** A form with one field: Enter saves it, Escape leaves, Shift and Enter begin a new line. */
const Field = ({
  state,
  draft,
  label,
  children,
}: {
  readonly state: RecordsState;
  readonly draft: RecordsDraft;
  readonly label: string;
  readonly children: ComponentChildren;
}) => {
  const field = useRef<HTMLTextAreaElement>(null);
  const faults = state.faults.value;
  // Before the next key: what is typed right after Enter belongs in the field, and a fault leads back to it.
  useLayoutEffect(() => field.current?.select(), []);
  useLayoutEffect(() => field.current?.focus(), [faults]);
  const keyed = (event: KeyboardEvent) => {
    if (event.key !== "Enter" || event.shiftKey || event.isComposing) return;
    event.preventDefault();
    void state.save();
  };
  return (
    <form
      onSubmit={(event) => {
        event.preventDefault();
        void state.save();
      }}
    >
      <label>
        {label}
        <textarea
          ref={field}
          rows={Math.min(4, draft.text.split("\n").length)}
          value={draft.text}
          onInput={(event) => state.write(event.currentTarget.value)}
          onKeyDown={keyed}
          {...(faults.length === 0 ? {} : { "aria-invalid": "true", "aria-describedby": `${SLIP}-faults` })}
        />
      </label>
      <div id={`${SLIP}-faults`} role="alert">
        {faults.map((sentence) => (
          <p key={sentence}>{sentence}</p>
        ))}
        {state.stale.value && <p>What you typed stays here. Read the table again, then save once more.</p>}
      </div>
      {children}
      <p class="do">
        {state.stale.value && (
          <button type="button" onClick={() => void state.readAgain()}>
            Read again
          </button>
        )}
        <button type="submit">{draft.what === "cell" ? "Save" : "Set aside"}</button>
        <button type="button" onClick={state.leave}>
          Leave it as it was
        </button>
      </p>
    </form>
  );
};

const CellNote = ({ cell }: { readonly cell: RecordsCell | undefined }) => (
  <>
    {cell?.warning === undefined ? null : (
      <p>
        <strong>Warning:</strong> {cell.warning.sentence}
      </p>
    )}
    {cell?.before === undefined ? null : (
      <p>Edited. In the file it still says {cell.before === "" ? "nothing" : <Quoted raw={cell.before} />}.</p>
    )}
  </>
);

const RowNote = ({ row, head, state, remarks }: RecordsSlipProps & { readonly head: RecordsPage }) => (
  <>
    <p>
      Row {row.row}
      {row.added ? ", added here and not in the file yet" : `, record ${row.record} of the file`}.
      {row.setAside === undefined ? "" : ` Set aside: ${row.setAside}`}
    </p>
    {remarks.map((sentence) => (
      <p key={sentence}>
        <strong>Warning:</strong> {sentence}
      </p>
    ))}
    {head.canSetAside && (
      <p class="do">
        {row.setAside === undefined ? (
          <button type="button" onClick={state.begin}>
            Set this row aside
          </button>
        ) : (
          <button type="button" onClick={() => void state.bringBack()}>
            Bring it back
          </button>
        )}
      </p>
    )}
  </>
);

/** Whether there is something to say of the place without being asked. */
export const hasNote = (row: RecordsRow | undefined, col: number, remarks: readonly string[]): boolean => {
  const cell = row?.cells[col - 1];
  return (
    cell?.warning !== undefined ||
    cell?.before !== undefined ||
    (col === 0 && (row?.setAside !== undefined || remarks.length > 0))
  );
};

/** What lies under the active cell. */
export const RecordsSlip = ({ state, row, remarks }: RecordsSlipProps) => {
  const [head, draft] = [state.head.value, state.draft.value];
  const col = draft?.col ?? state.place.value.col;
  const cell = row.cells[col - 1];
  if (head === null) return null;
  if (draft === null)
    return col === 0 ? (
      <RowNote row={row} head={head} state={state} remarks={remarks} />
    ) : (
      <>
        <CellNote cell={cell} />
        {head.editable && (
          <p class="do">
            <button type="button" onClick={state.begin}>
              Edit this cell
            </button>
          </p>
        )}
      </>
    );
  const name = head.columns[col - 1]?.name;
  return draft.what === "cell" ? (
    <Field key="cell" state={state} draft={draft} label={`${name} of row ${draft.row}, as it is written`}>
      {cell !== undefined && cell.raw !== draft.begun ? null : <CellNote cell={cell} />}
      {draft.text !== draft.begun && (
        <p>It says {draft.begun === "" ? "nothing" : <Quoted raw={draft.begun} />} now.</p>
      )}
    </Field>
  ) : (
    <Field key="row" state={state} draft={draft} label={`Why row ${draft.row} is set aside`}>
      <p>The row stays where it is, and takes no part in answers until you bring it back.</p>
    </Field>
  );
};
