// What was asked, as a side-note: in the page a button that opens it as text, in a copy plain text.
import { useEffect, useRef } from "preact/hooks";

export type AskedNoteProps = {
  readonly name: string;
  readonly text: string;
  /** Null where nothing can be written. */
  readonly edit: (() => void) | null;
  /** Whether it has just been written: then it takes the focus back. */
  readonly returning: boolean;
};

/** The text of an entry. */
export const AskedNote = ({ name, text, edit, returning }: AskedNoteProps) => {
  const button = useRef<HTMLButtonElement>(null);
  useEffect(() => {
    if (returning) button.current?.focus();
  }, []);
  return (
    <div class="asked-note">
      {edit === null ? (
        <p class="as-written">{text}</p>
      ) : (
        <button ref={button} type="button" class="as-written" aria-label={`Write ${name}: ${text}`} onClick={edit}>
          {text}
        </button>
      )}
    </div>
  );
};
