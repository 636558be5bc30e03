// Where a table comes from: a file that is chosen or dropped, or cells that are pasted.
import { useSignal } from "@preact/signals";
import { tabbedCells } from "../state/tabbed-cells.ts";

export type ImportSourceProps = {
  readonly choose: (file: File) => void;
  /** A file was chosen already: this one would take its place. */
  readonly another: boolean;
};

/** Cells out of a clipboard as a file. */
const pastedFile = (text: string) => new File([tabbedCells(text)], "pasted.tsv", { type: "text/tab-separated-values" });

/** The two ways in. */
export const ImportSource = ({ choose, another }: ImportSourceProps) => {
  const cells = useSignal("");
  const read = (text: string) => {
    if (text.trim() === "") return;
    choose(pastedFile(text));
    cells.value = "";
  };
  return (
    <div class="import-source">
      <label>
        {another ? "Another table instead" : "A table file: CSV, tab-separated text, .xlsx or .ods"}
        <input
          type="file"
          accept=".csv,.tsv,.txt,.xlsx,.ods,.xls"
          onChange={({ currentTarget }) => {
            const file = currentTarget.files?.[0];
            currentTarget.value = "";
            if (file) choose(file);
          }}
        />
        <small>Or drop it anywhere on this page.</small>
      </label>
      <form
        onSubmit={(event) => {
          event.preventDefault();
          read(cells.value);
        }}
      >
        <label>
          Cells copied from a sheet or a message
          <textarea
            rows={3}
            spellcheck={false}
            autocomplete="off"
            value={cells.value}
            onInput={({ currentTarget }) => (cells.value = currentTarget.value)}
            onPaste={(event) => {
              const text = event.clipboardData?.getData("text/plain") ?? "";
              if (cells.value !== "" || !/[\t\n]/.test(text)) return;
              event.preventDefault();
              read(text);
            }}
          />
        </label>
        <button type="submit">Read these cells</button>
      </form>
    </div>
  );
};
