// Bringing in a table: the way in, what is asked, what is to be minded, raw beside read, and the last step.
import type { ImportReading } from "../../core/records/index.ts";
import type { Listing } from "../state/api.ts";
import type { ImportState } from "../state/import-state.ts";
import { ImportDone } from "./import-done.tsx";
import { ImportQuestions, ImportRemembered } from "./import-questions.tsx";
import { ImportSource } from "./import-source.tsx";
import { ImportSetAside, ImportTable } from "./import-table.tsx";
import { ImportTakeForm } from "./import-take-form.tsx";
import { ImportWarnings } from "./import-warnings.tsx";

export type ImportViewProps = {
  readonly state: ImportState;
  readonly notebooks: readonly Listing[];
  /** Shows a notebook that was begun or added to. */
  readonly go: (notebook: string | null) => void;
};

const Read = ({ state, reading }: { readonly state: ImportState; readonly reading: ImportReading }) => (
  <>
    {state.remembered.value !== null && (
      <ImportRemembered
        from={state.remembered.value}
        answers={reading.answers}
        askAgain={() => void state.askAgain()}
      />
    )}
    <ImportQuestions questions={state.questions.value} answer={(id, choice) => void state.answer(id, choice)} />
    <ImportWarnings reading={reading} />
    {reading.tables.map((table, place) => (
      <ImportTable key={table.name} table={table} number={place + 1} />
    ))}
    {reading.tableCount > reading.tables.length && (
      <p>{reading.tableCount - reading.tables.length} more tables of the file are brought in with these.</p>
    )}
    <ImportSetAside reading={reading} />
    {reading.tables.length > 0 && (
      <ImportTakeForm
        name={state.name.value}
        exists={reading.exists}
        replace={state.replace.value}
        open={state.questions.value.filter(({ chosen }) => chosen === null).length}
        rename={(name) => void state.rename(name)}
        mayReplace={state.mayReplace}
        bringIn={() => void state.bringIn()}
      />
    )}
  </>
);

/** The whole of it. */
export const ImportView = ({ state, notebooks, go }: ImportViewProps) => {
  const [reading, done] = [state.reading.value, state.broughtIn.value];
  if (done !== null)
    return (
      <ImportDone
        key={done.table}
        done={done}
        notebooks={notebooks}
        begin={(name, text) => void state.begin(name, text).then(go)}
        addTo={(notebook) => void state.addTo(notebook).then(go)}
        another={state.putAway}
      />
    );
  return (
    <section class="import-view" aria-labelledby="import" aria-busy={state.busy.value}>
      <h1 id="import">{state.name.value === "" ? "Bring in a table" : <bdi>{state.name.value}</bdi>}</h1>
      {reading === null && (
        <p>
          {state.busy.value
            ? "Reading."
            : "A table of your records as it is; nothing needs to be tidied first. You see how every cell is read before anything is kept, and what only you can know is asked once."}
        </p>
      )}
      {reading !== null && <Read state={state} reading={reading} />}
      <ImportSource choose={(file) => void state.choose(file)} another={reading !== null} />
    </section>
  );
};
