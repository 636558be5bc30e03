// After a table is in the folder: a notebook to begin with it, or one to add it to.
import { useSignal } from "@preact/signals";
import { useEffect, useRef } from "preact/hooks";
import type { Listing } from "../state/api.ts";
import type { BroughtIn } from "../state/import-state.ts";
import { recordsAddress } from "../state/records-address.ts";

export type ImportDoneProps = {
  readonly done: BroughtIn;
  readonly notebooks: readonly Listing[];
  readonly begin: (name: string, text: string) => void;
  readonly addTo: (notebook: string) => void;
  readonly another: () => void;
};

/** What can be done with the table now. */
export const ImportDone = ({ done, notebooks, begin, addTo, another }: ImportDoneProps) => {
  const heading = useRef<HTMLHeadingElement>(null);
  const name = useSignal(done.suggestion.file);
  const text = useSignal(done.suggestion.text);
  const chosen = useSignal(notebooks[0]?.file ?? "");
  // The form it came from is gone; whoever works by keys or ear goes on here.
  useEffect(() => heading.current?.focus(), []);
  return (
    <section class="import-done" aria-labelledby="import-done">
      <h1 id="import-done" ref={heading} tabIndex={-1}>
        <bdi>{done.table}</bdi> is in the folder
      </h1>
      <p>
        <a href={recordsAddress({ file: done.table, table: 1 })}>Look through its records</a>, or go on with a notebook.
      </p>
      <form
        onSubmit={(event) => {
          event.preventDefault();
          begin(name.value, text.value);
        }}
      >
        <h2>Begin a notebook with it</h2>
        <label>
          Name of the notebook
          <input
            type="text"
            required
            autocomplete="off"
            spellcheck={false}
            value={name.value}
            onInput={({ currentTarget }) => (name.value = currentTarget.value)}
          />
        </label>
        <label>
          How it begins
          <textarea
            rows={text.value.split("\n").length}
            spellcheck={false}
            value={text.value}
            onInput={({ currentTarget }) => (text.value = currentTarget.value)}
          />
        </label>
        <button type="submit">Begin the notebook</button>
      </form>
      {notebooks.length > 0 && (
        <form
          onSubmit={(event) => {
            event.preventDefault();
            addTo(chosen.value);
          }}
        >
          <h2>Or add it to one that you have</h2>
          <label>
            Notebook
            <select value={chosen.value} onChange={({ currentTarget }) => (chosen.value = currentTarget.value)}>
              {notebooks.map(({ file, title }) => (
                <option key={file} value={file}>
                  {title}
                </option>
              ))}
            </select>
          </label>
          <button type="submit">Add it at the end</button>
        </form>
      )}
      <p>
        <button type="button" onClick={another}>
          Bring in another table
        </button>
      </p>
    </section>
  );
};
