// A new record as a form made from the table's columns: one field each, with its unit, kind and meaning beside it.
import type { RecordsPage } from "../../core/records/index.ts";
import { unitForDisplay, unitInWords } from "../../core/units/index.ts";

type Column = RecordsPage["columns"][number];

const Field = ({ column, place }: { readonly column: Column; readonly place: number }) => {
  const unit = column.unit === null || column.unit === "" || column.unit === "1" ? null : column.unit;
  const about = `records-add-${place}`;
  return (
    <div class="field">
      <label>
        <bdi>{column.name}</bdi>
        {unit === null ? null : (
          <>
            {" "}
            <span aria-hidden="true">({unitForDisplay(unit)})</span>
            <span class="for-readers">in {unitInWords(unit)}</span>
          </>
        )}
        <input name={String(place)} autocomplete="off" aria-describedby={about} />
      </label>
      <small id={about}>
        {column.kind}
        {column.meaning === undefined ? "" : `: ${column.meaning}`}
      </small>
    </div>
  );
};

/** The form; it is emptied once its record is in the table. */
export const RecordsAddForm = ({
  head,
  add,
}: {
  readonly head: RecordsPage;
  readonly add: (cells: readonly string[]) => Promise<boolean>;
}) => {
  const sent = async (event: SubmitEvent & { readonly currentTarget: HTMLFormElement }) => {
    event.preventDefault();
    const form = event.currentTarget;
    const fields = new FormData(form);
    const cells = head.columns.map((_, place) => String(fields.get(String(place)) ?? ""));
    if (cells.every((cell) => cell.trim() === "")) return form.querySelector("input")?.focus();
    if (await add(cells)) form.reset();
  };
  return (
    <details class="records-add-form">
      <summary>Add a record</summary>
      <form onSubmit={(event) => void sent(event)}>
        <p>Write each value as you would in the file; what is left empty stays blank.</p>
        <div class="fields">
          {head.columns.map((column, place) => (
            <Field key={column.name} column={column} place={place} />
          ))}
        </div>
        <button type="submit">Add this record</button>
      </form>
    </details>
  );
};
