// Two versions of one file, side by side, each whole; the maker chooses, and nothing is written until then.
import { useEffect, useRef } from "preact/hooks";

export type ConflictViewProps = {
  readonly file: string;
  readonly yours: string;
  readonly theirs: string;
  readonly keepMine: () => void;
  readonly takeTheirs: () => void;
};

/** Lines that the other version does not have at the same place from either end. */
function differing(text: string, other: string): string {
  const [a, b] = [text.split("\n"), other.split("\n")];
  let [from, end] = [0, 0];
  while (from < a.length && from < b.length && a[from] === b[from]) from++;
  while (end < a.length - from && end < b.length - from && a.at(-1 - end) === b.at(-1 - end)) end++;
  return a.slice(from, a.length - end).join("\n");
}

/** A conflict, with what differs. */
export const ConflictView = ({ file, yours, theirs, keepMine, takeTheirs }: ConflictViewProps) => {
  const heading = useRef<HTMLHeadingElement>(null);
  // It stands at the top of the page, and the maker may be far below it.
  useEffect(() => heading.current?.focus(), []);
  return (
    <section class="conflict-view" aria-labelledby="conflict">
      <h2 id="conflict" ref={heading} tabIndex={-1}>
        {file} was changed by something else
      </h2>
      <div>
        <section aria-label="Yours">
          <h3>Yours</h3>
          <pre>{differing(yours, theirs)}</pre>
          <button type="button" onClick={keepMine}>
            Write yours over it
          </button>
        </section>
        <section aria-label="In the file">
          <h3>In the file now</h3>
          <pre>{differing(theirs, yours)}</pre>
          <button type="button" onClick={takeTheirs}>
            Take the file’s
          </button>
        </section>
      </div>
    </section>
  );
};
