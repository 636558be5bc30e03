// Writing a part as text: a plain text field at once, the editor with colours in its place as soon as it has loaded.
import { useEffect, useRef } from "preact/hooks";
import type { Problem } from "../../core/base/index.ts";
import { ProblemView } from "../views/problem-view.tsx";
import type { CodeEditor, EditorInput } from "./code-editor.ts";

export type SentenceEditorProps = {
  readonly name: string;
  readonly kind: string;
  readonly text: string;
  /** Shown under the text, and marked in it. */
  readonly problems: readonly Problem[];
  /** Line in the file of the first line of the text: places of problems count from there. */
  readonly line: number;
  readonly names: readonly string[];
  readonly write: (text: string) => void;
  readonly save: () => void;
  readonly leave: () => void;
  readonly load: (input: EditorInput) => Promise<CodeEditor>;
};

/** The editor of one part. */
export const SentenceEditor = ({
  name,
  kind,
  text,
  problems,
  line,
  names,
  write,
  save,
  leave,
  load,
}: SentenceEditorProps) => {
  const host = useRef<HTMLDivElement>(null);
  const field = useRef<HTMLTextAreaElement>(null);
  const now = useRef({ write, save, leave });
  now.current = { write, save, leave };
  const made = useRef<CodeEditor | null>(null);
  useEffect(() => made.current?.mark(problems, line), [problems, line]);
  useEffect(() => {
    field.current?.focus();
    const place = host.current;
    let gone = false;
    const actions = {
      write: (body: string) => now.current.write(body),
      save: () => now.current.save(),
      leave: () => now.current.leave(),
    };
    if (place !== null)
      void load({ host: place, text, kind, names, label: `Text of ${name}`, ...actions }).then((editor) => {
        if (gone) return editor.destroy();
        made.current = editor;
        editor.takeOver(field.current);
        editor.mark(problems, line);
      });
    return () => {
      gone = true;
      made.current?.destroy();
    };
  }, []);
  const keys = (event: KeyboardEvent) => {
    if (event.key === "Escape") leave();
    if (event.key === "Enter" && (event.ctrlKey || event.metaKey)) save();
  };
  return (
    <div class="sentence-editor">
      <textarea
        ref={field}
        aria-label={`Text of ${name}`}
        rows={Math.max(2, text.split("\n").length)}
        spellcheck={kind === "prose"}
        onKeyDown={keys}
        onInput={(event) => write(event.currentTarget.value)}
      >
        {text}
      </textarea>
      <div ref={host} />
      {problems.length > 0 && (
        <div aria-live="polite">
          <ProblemView problems={problems} />
        </div>
      )}
      <p>
        <button type="button" onClick={save}>
          Save
        </button>{" "}
        <button type="button" onClick={leave}>
          Leave as it was
        </button>
      </p>
    </div>
  );
};
