// One component for each kind of view; the page, the reader and the copy's plain HTML all come through here.
import type { JSX } from "preact";
import type { Drawing, View } from "../../core/base/index.ts";
import { AmountView } from "./amount-view.tsx";
import { AnswerView } from "./answer-view.tsx";
import { PictureView } from "./picture-view.tsx";
import { ProblemView } from "./problem-view.tsx";
import { SliderView } from "./slider-view.tsx";
import { TableView } from "./table-view.tsx";

export type ViewShownProps = {
  readonly view: View;
  readonly drawing: Drawing | null;
  /** Null where dials do not turn. */
  readonly turn: ((dial: string, value: number) => void) | null;
  /** Whether tables show all their rows at once. */
  readonly whole: boolean;
};

type Of<K extends View["kind"]> = Extract<View, { kind: K }>;
type Show<K extends View["kind"]> = (view: Of<K>, props: ViewShownProps) => JSX.Element;

const SHOW: { readonly [K in View["kind"]]: Show<K> } = {
  answer: (view, { drawing }) => <AnswerView finding={view.finding} drawing={drawing} />,
  table: (view, { whole }) => <TableView table={view} whole={whole} />,
  picture: (view, { drawing }) => <PictureView picture={view.picture} drawing={drawing} />,
  slider: (view, { turn }) => (
    <SliderView view={view} turn={turn === null ? null : (value) => turn(view.name, value)} />
  ),
  amount: (view) => <AmountView view={view} />,
  prose: (view) => <p class="as-written">{view.text}</p>,
  problem: (view) => <ProblemView problems={view.problems} />,
};

/** A view as its component shows it. */
export const ViewShown = (props: ViewShownProps) =>
  (SHOW[props.view.kind] as Show<View["kind"]>)(props.view as never, props);
