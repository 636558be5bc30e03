// The editor with colours and completion, in a shadow root so that its style sheets are adopted and not written into the page.
import { autocompletion, completionKeymap } from "@codemirror/autocomplete";
import { defaultKeymap, history, historyKeymap } from "@codemirror/commands";
import { setDiagnostics } from "@codemirror/lint";
import { EditorState } from "@codemirror/state";
import { EditorView, keymap } from "@codemirror/view";
import type { Problem } from "../../core/base/index.ts";
import { sentenceColours } from "./sentence-colours.ts";
import { sentenceLanguage } from "./sentence-language.ts";

export type EditorInput = {
  readonly host: HTMLElement;
  readonly text: string;
  readonly kind: string;
  /** Names that may be completed: columns, entries, methods. */
  readonly names: readonly string[];
  readonly label: string;
  readonly write: (text: string) => void;
  readonly save: () => void;
  readonly leave: () => void;
};

export type CodeEditor = {
  /** Takes text, place and focus over from the plain field, which is hidden. */
  readonly takeOver: (field: HTMLTextAreaElement | null) => void;
  /** Marks the places of problems; `line` is the line in the file of the first line here. */
  readonly mark: (problems: readonly Problem[], line: number) => void;
  readonly destroy: () => void;
};

const look = EditorView.theme({
  "&": { backgroundColor: "var(--paper-sunk)", color: "var(--ink)", border: "1px solid var(--rule-strong)" },
  "&.cm-focused": { outline: "var(--line) solid var(--focus)" },
  ".cm-content": { fontFamily: "var(--written)", fontSize: "var(--size-small)", caretColor: "var(--ink)" },
  ".cm-cursor": { borderLeftColor: "var(--ink)" },
  ".cm-tooltip": { backgroundColor: "var(--paper)", color: "var(--ink)", border: "1px solid var(--rule-strong)" },
  ".cm-tooltip-autocomplete ul li[aria-selected]": {
    backgroundColor: "var(--paper-sunk)",
    color: "var(--ink)",
    outline: "1px solid var(--focus)",
  },
});

/** Makes the editor inside a host element. */
export function codeEditor({ host, text, kind, names, label, write, save, leave }: EditorInput): CodeEditor {
  const root = host.shadowRoot ?? host.attachShadow({ mode: "open" });
  const acts = (action: () => void) => () => {
    action();
    return true;
  };
  const view = new EditorView({
    parent: root,
    root,
    state: EditorState.create({
      doc: text,
      extensions: [
        history(),
        keymap.of([
          { key: "Mod-Enter", run: acts(save) },
          { key: "Mod-s", run: acts(save), preventDefault: true },
          ...completionKeymap,
          { key: "Escape", run: acts(leave) },
          ...defaultKeymap,
          ...historyKeymap,
        ]),
        autocompletion(),
        sentenceLanguage(kind, names),
        sentenceColours(kind),
        EditorView.lineWrapping,
        EditorView.contentAttributes.of({ "aria-label": label, spellcheck: String(kind === "prose") }),
        EditorView.updateListener.of((update) => {
          if (update.docChanged) write(update.state.doc.toString());
        }),
        look,
      ],
    }),
  });
  return {
    takeOver: (field) => {
      if (field === null) return;
      const focused = (field.getRootNode() as Document).activeElement === field;
      if (field.value !== text) view.dispatch({ changes: { from: 0, to: view.state.doc.length, insert: field.value } });
      const [anchor, head] = focused ? [field.selectionStart, field.selectionEnd] : [0, 0];
      view.dispatch({
        selection: { anchor: Math.min(anchor, view.state.doc.length), head: Math.min(head, view.state.doc.length) },
      });
      field.hidden = true;
      if (focused) view.focus();
    },
    mark: (problems, line) => {
      const { doc } = view.state;
      const marks = problems.flatMap((problem) => {
        const number = problem.line - line + 1;
        if (number < 1 || number > doc.lines) return [];
        const place = doc.line(number);
        const from = Math.min(place.from + problem.column - 1, place.to);
        return [
          {
            from,
            to: Math.min(Math.max(from + problem.length, from), doc.length),
            severity: "error" as const,
            message: problem.sentence,
          },
        ];
      });
      view.dispatch(setDiagnostics(view.state, marks));
    },
    destroy: () => view.destroy(),
  };
}
