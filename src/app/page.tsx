// The page put together: head, the notebook or the contents, foot. It takes state and draws; it fetches nothing.

import type { CodeEditor, EditorInput } from "./editor/code-editor.ts";
import { SentenceEditor } from "./editor/sentence-editor.tsx";
import type { ImportState } from "./state/import-state.ts";
import type { PageState } from "./state/page-state.ts";
import { recordsAddress } from "./state/records-address.ts";
import type { RecordsState } from "./state/records-state.ts";
import { resultsByPart } from "./state/results-by-part.ts";
import { ConflictView } from "./views/conflict-view.tsx";
import { ContentsView } from "./views/contents-view.tsx";
import { ImportPlace } from "./views/import-place.tsx";
import { NotebookView } from "./views/notebook-view.tsx";
import { RecordsLinks } from "./views/records-links.ts";
import { RecordsPlace } from "./views/records-place.tsx";
import { ShareForm } from "./views/share-form.tsx";
import { StatusLine } from "./views/status-line.tsx";

export type PageProps = {
  readonly state: PageState;
  readonly records: RecordsState;
  readonly bringing: ImportState;
  /** Leads to a notebook by its name. */
  readonly go: (notebook: string | null) => void;
  readonly today: string;
  readonly loadEditor: (input: EditorInput) => Promise<CodeEditor>;
  readonly keep: (date: string, without: readonly string[]) => void;
};

/** Who speaks: what is brought in, the open table, or the notebook. */
const speaking = (props: PageProps) => (props.bringing.shown.value ? props.bringing : atWork(props));

/** Who is undone and does again: the open table, else the notebook. */
const atWork = ({ state, records }: PageProps) => (records.file.value === null ? state : records);

const Undoing = ({ of }: { readonly of: PageState | RecordsState }) => (
  <>
    <button type="button" disabled={!of.canUndo.value} onClick={() => void of.undo()}>
      Undo
    </button>
    <button type="button" disabled={!of.canRedo.value} onClick={() => void of.redo()}>
      Redo
    </button>
  </>
);

const Head = (props: PageProps) => (
  <header class="page-head">
    <nav aria-label="Notebooks">
      <a href="#contents">Contents</a>
      <a href="#bring-in">Bring in a table</a>
    </nav>
    {!props.bringing.shown.value && (props.state.shown.value !== null || props.records.file.value !== null) && (
      <Undoing of={atWork(props)} />
    )}
    {!props.bringing.shown.value && props.state.shown.value !== null && props.records.file.value === null && (
      <ShareForm today={props.today} share={props.keep} />
    )}
  </header>
);

/** The names that a sentence may use. */
const namesOf = (state: PageState) => [
  ...new Set(
    (state.shown.value?.result.entries ?? []).flatMap((entry) => [
      ...(entry.view.kind === "table" ? entry.view.columns.map((column) => column.name) : []),
      entry.name,
    ]),
  ),
];

const Editor = ({ state, loadEditor }: PageProps) => {
  const data = state.shown.value;
  const part = state.editing.value === null ? undefined : data?.parts[state.editing.value];
  if (part === undefined || data === null) return null;
  const result = resultsByPart(data)[state.editing.value ?? -1];
  return (
    <SentenceEditor
      key={state.editing.value}
      name={part.is === "entry" ? part.name : "this passage"}
      kind={result?.kind ?? "prose"}
      text={state.draft.value}
      problems={result?.problems ?? []}
      line={(result?.line ?? 0) + 1}
      names={namesOf(state)}
      write={state.write}
      save={() => void state.save()}
      leave={state.leave}
      load={loadEditor}
    />
  );
};

const Foot = () => (
  <footer class="page-foot">
    <details>
      <summary>Keys</summary>
      <ul>
        <li>
          <kbd>Tab</kbd> moves to the next sentence, <kbd>Enter</kbd> opens it as text
        </li>
        <li>
          <kbd>Ctrl</kbd> or <kbd>Cmd</kbd> with <kbd>Enter</kbd> saves, <kbd>Escape</kbd> leaves it as it was
        </li>
        <li>
          In records: the arrows, <kbd>Home</kbd>, <kbd>End</kbd>, <kbd>Page Up</kbd> and <kbd>Page Down</kbd> move,
          <kbd>Enter</kbd> or <kbd>F2</kbd> opens a cell or sets a row aside, <kbd>Enter</kbd> saves it,
          <kbd>Shift</kbd> with <kbd>Enter</kbd> begins a new line in it
        </li>
        <li>
          <kbd>Ctrl</kbd> or <kbd>Cmd</kbd> with <kbd>Z</kbd> undoes, with <kbd>Shift</kbd> too, or
          <kbd>Ctrl</kbd> with <kbd>Y</kbd>, does again
        </li>
      </ul>
    </details>
    <p>
      Wood dust, solvents and sharp tools can hurt, and some woods are protected: follow your local codes and licensed
      practice.
    </p>
  </footer>
);

/** The whole page. */
export const Page = (props: PageProps) => {
  const { state, records, bringing, go } = props;
  const { message, troubles } = speaking(props);
  const { unsaved } = atWork(props);
  const [data, conflict] = [state.shown.value, state.conflict.value];
  return (
    <div class="sheet">
      <a class="skip" href="#main">
        To the answers
      </a>
      <Head {...props} />
      <StatusLine message={message.value} troubles={troubles.value} unsaved={unsaved.value} />
      <main id="main" tabIndex={-1}>
        {conflict !== null && data !== null && records.file.value === null && !bringing.shown.value && (
          <ConflictView
            file={data.file}
            yours={conflict.yours}
            theirs={conflict.theirs.text}
            keepMine={() => void state.keepMine()}
            takeTheirs={state.takeTheirs}
          />
        )}
        {bringing.shown.value ? (
          <ImportPlace state={bringing} notebooks={state.listing.value ?? []} go={go} />
        ) : records.file.value !== null ? (
          <RecordsPlace state={records} />
        ) : data === null ? (
          <ContentsView notebooks={state.listing.value} tables={records.tables.value} />
        ) : (
          <RecordsLinks.Provider value={recordsAddress}>
            <NotebookView
              data={data}
              writing={{
                part: state.editing.value,
                left: state.left.value,
                edit: state.edit,
                turn: state.turn,
                add: (kind) => void state.add(kind),
                editor: <Editor {...props} />,
              }}
            />
          </RecordsLinks.Provider>
        )}
      </main>
      <Foot />
    </div>
  );
};
