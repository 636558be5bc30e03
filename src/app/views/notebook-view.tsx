// The notebook, top to bottom: its title, then prose and entries in the order of the file.
import type { ComponentChildren } from "preact";
import type { PageData, PagePart } from "../../notebook/share/index.ts";
import { resultsByPart } from "../state/results-by-part.ts";
import { EntryView } from "./entry-view.tsx";
import { ProblemView } from "./problem-view.tsx";
import { ProseView } from "./prose-view.tsx";

/** What a maker can do in the page; a copy has none of it. */
export type Writing = {
  readonly part: number | null;
  /** The part that was written last. */
  readonly left: number | null;
  readonly edit: (part: number) => void;
  readonly editor: ComponentChildren;
  readonly turn: (dial: string, value: number) => void;
  readonly add: (kind: string) => void;
};

/** What can be begun at the end of a notebook, in the words of its button. */
const BEGIN = [
  ["question", "Ask a question"],
  ["rule", "State a rule"],
  ["value", "Name a value"],
  ["picture", "Draw a picture"],
] as const;

const deepestHeading = (part: PagePart, before: number): number =>
  part.is === "entry"
    ? before
    : part.prose.reduce(
        (level, node) => (node.is === "heading" ? Math.min(5, Math.max(2, node.depth)) : level),
        before,
      );

/** The whole notebook. */
export const NotebookView = ({ data, writing }: { readonly data: PageData; readonly writing: Writing | null }) => {
  // By place: names alone do not tell `records tops` from `columns tops`.
  const results = resultsByPart(data);
  // A problem of an entry stands with its entry, and not a second time at the top.
  const shown = new Set(
    data.result.entries.flatMap(({ problems }) =>
      problems.map(({ line, column, code }) => `${line}:${column}:${code}`),
    ),
  );
  const ofTheFile = data.result.problems.filter(({ line, column, code }) => !shown.has(`${line}:${column}:${code}`));
  let heading = 1;
  const levels = data.parts.map((part) => {
    heading = deepestHeading(part, heading);
    return heading + 1;
  });
  return (
    <article class="notebook-view">
      <h1>{data.result.title || data.file}</h1>
      {ofTheFile.length > 0 && <ProblemView problems={ofTheFile} />}
      {data.parts.map((part, place) => {
        const editor = writing?.part === place ? writing.editor : null;
        const edit = writing === null ? null : () => writing.edit(place);
        if (part.is === "prose") return editor ?? <ProsePart key={place} part={part} edit={edit} />;
        const result = results[place];
        if (result === undefined) return null;
        return (
          <EntryView
            key={place}
            result={result}
            drawing={part.drawing}
            edit={edit}
            turn={writing?.turn ?? null}
            editor={editor}
            returning={writing?.left === place}
            level={levels[place] ?? 2}
          />
        );
      })}
      {writing !== null && writing.part === null && (
        <p class="begin">
          {BEGIN.map(([kind, words]) => (
            <button key={kind} type="button" onClick={() => writing.add(kind)}>
              {words}
            </button>
          ))}
        </p>
      )}
    </article>
  );
};

const ProsePart = ({
  part,
  edit,
}: {
  readonly part: Extract<PagePart, { is: "prose" }>;
  readonly edit: (() => void) | null;
}) =>
  part.prose.length === 0 ? null : (
    <div class="prose-part">
      <ProseView prose={part.prose} />
      {edit === null ? null : (
        <button type="button" onClick={edit}>
          Write this passage
        </button>
      )}
    </div>
  );
