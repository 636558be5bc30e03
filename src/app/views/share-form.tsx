// The dated copy: its date, the columns to leave out, and one button.

export type ShareFormProps = {
  readonly today: string;
  readonly share: (date: string, without: readonly string[]) => void;
};

/** The form of a dated copy. */
export const ShareForm = ({ today, share }: ShareFormProps) => {
  const sent = (event: SubmitEvent & { readonly currentTarget: HTMLFormElement }) => {
    event.preventDefault();
    const fields = new FormData(event.currentTarget);
    const without = String(fields.get("without") ?? "")
      .split(",")
      .map((name) => name.trim())
      .filter((name) => name !== "");
    share(String(fields.get("date") ?? ""), without);
  };
  return (
    <details class="share-form">
      <summary>Dated copy</summary>
      <form onSubmit={sent}>
        <label>
          Date of the copy <input name="date" type="date" required value={today} />
        </label>
        <label>
          Columns to leave out, with commas between <input name="without" type="text" autocomplete="off" />
        </label>
        <button type="submit">Save the dated copy</button>
      </form>
    </details>
  );
};
