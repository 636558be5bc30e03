// One entry: its name on its rule, what was asked beside what is answered. Tables, values and dials take the full width.
import type { ComponentChildren } from "preact";
import type { Drawing, View } from "../../core/base/index.ts";
import type { EntryResult } from "../../notebook/engine/index.ts";
import { AskedNote } from "./asked-note.tsx";
import { ProblemView } from "./problem-view.tsx";
import { ViewShown } from "./view-shown.tsx";

export type EntryViewProps = {
  readonly result: EntryResult;
  readonly drawing: Drawing | null;
  readonly edit: (() => void) | null;
  readonly turn: ((dial: string, value: number) => void) | null;
  /** Stands in place of the note while the entry is being written. */
  readonly editor: ComponentChildren;
  readonly returning: boolean;
  /** Level of its heading, one below the prose heading above it. */
  readonly level: number;
};

/** How wide each kind of view is shown: beside its note, across the page, or as one ruled line. */
const WIDTH: { readonly [K in View["kind"]]: "beside" | "full" | "line" } = {
  answer: "beside",
  picture: "beside",
  problem: "beside",
  table: "full",
  prose: "full",
  slider: "line",
  amount: "line",
};

/** An entry of the notebook. */
export const EntryView = ({ result, drawing, edit, turn, editor, returning, level }: EntryViewProps) => {
  const { view, kind, name } = result;
  const Heading = `h${level}` as "h2";
  return (
    <section class="entry-view" data-kind={kind} data-width={WIDTH[view.kind]}>
      <Heading>
        <span>{kind}</span> {name.startsWith(`${kind}-`) ? name.slice(kind.length + 1) : name}
      </Heading>
      {editor ?? <AskedNote name={name} text={result.asked.trim()} edit={edit} returning={returning} />}
      <div class="result">
        {view.kind === "problem" && editor !== null ? null : (
          <ViewShown view={view} drawing={drawing} turn={turn} whole={false} />
        )}
        {view.kind !== "problem" && editor === null && result.problems.length > 0 && (
          <ProblemView problems={result.problems} />
        )}
      </div>
    </section>
  );
};
