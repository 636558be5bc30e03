// What was asked, as a side-note: in the page a button that opens it as text, in a copy plain text.

/** The text of an entry. `edit` is null where nothing can be written. */
export const AskedNote = ({
  name,
  text,
  edit,
}: {
  readonly name: string;
  readonly text: string;
  readonly edit: (() => void) | null;
}) => (
  <div class="asked-note">
    {edit === null ? (
      <p class="as-written">{text}</p>
    ) : (
      <button type="button" class="as-written" aria-label={`Write ${name}: ${text}`} onClick={edit}>
        {text}
      </button>
    )}
  </div>
);
