// The last step: under which name the file is kept, and the button that brings it in.
export type ImportTakeFormProps = {
  readonly name: string;
  readonly exists: boolean;
  readonly replace: boolean;
  readonly open: number;
  readonly rename: (name: string) => void;
  readonly mayReplace: (replace: boolean) => void;
  readonly bringIn: () => void;
};

/** The form. */
export const ImportTakeForm = ({ name, exists, replace, open, rename, mayReplace, bringIn }: ImportTakeFormProps) => (
  <form
    class="import-take-form"
    onSubmit={(event) => {
      event.preventDefault();
      bringIn();
    }}
  >
    <label>
      Its name in the folder called records
      <input
        type="text"
        required
        maxLength={200}
        autocomplete="off"
        spellcheck={false}
        value={name}
        onChange={({ currentTarget }) => rename(currentTarget.value)}
      />
    </label>
    {exists && (
      <label class="tick">
        <input type="checkbox" checked={replace} onChange={({ currentTarget }) => mayReplace(currentTarget.checked)} />
        There is a {name} already. Put this one in its place; the old one stays beside it for 30 days.
      </label>
    )}
    <p>
      The file is kept as it is, to the byte.
      {open === 0
        ? ""
        : ` ${open === 1 ? "One question is" : `${open} questions are`} open; until you answer, the cells stay as they are read above.`}
    </p>
    <button type="submit" disabled={exists && !replace}>
      Bring it in
    </button>
  </form>
);
