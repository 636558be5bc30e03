// Dials of a dated copy. Nothing is computed until one is touched; then the copy's own engine answers again what depends on it, and only
// these entries are drawn anew. No request, no markup parsed.
import { render } from "preact";
import type { Drawing, Picture, View } from "../core/base/index.ts";
import { toSi, unitFromCode } from "../core/units/index.ts";
import type { NotebookEngine, NotebookResult } from "../notebook/engine/index.ts";
import { type EmbeddedCopy, engineOfCopy, pictureInView } from "../notebook/share/index.ts";
import { ViewShown } from "./views/view-shown.tsx";

type Slider = Extract<View, { readonly kind: "slider" }>;
type Turn = (dial: string, value: number) => void;
/** Null in a copy whose pictures do not hang on a dial. */
type Draw = ((picture: Picture) => Drawing) | null;

const TURNED = "A dial has been turned: the answers follow it. Open the copy again to see it as it was made.";
const STUCK = "The dial cannot be followed: the data in this copy are damaged. What stands here is as it was made.";

function showEntries(document: Document, before: NotebookResult, now: NotebookResult, draw: Draw, turn: Turn): void {
  const answered = document.querySelectorAll<HTMLElement>("#copy > .entry > .answered");
  for (const [place, { view }] of now.entries.entries()) {
    const home = answered[place];
    if (home === undefined || before.entries[place]?.view === view) continue;
    const picture = pictureInView(view);
    render(
      <ViewShown
        view={view}
        drawing={picture === undefined || draw === null ? null : draw(picture)}
        turn={turn}
        whole={true}
      />,
      home,
    );
  }
}

const sliderOf = (result: NotebookResult, dial: string): Slider | undefined =>
  result.entries.map(({ view }) => view).find((view): view is Slider => view.kind === "slider" && view.name === dial);

/** Turns to the newest position that was asked for; what came between is passed over. */
function turning(document: Document, copy: () => EmbeddedCopy, draw: Draw, tell: (sentence: string) => void): Turn {
  const wanted = new Map<string, number>();
  let engine: NotebookEngine | null = null;
  let busy = false;
  async function follow(): Promise<void> {
    if (busy) return;
    busy = true;
    try {
      engine ??= engineOfCopy(copy());
      await engine.settled();
      while (wanted.size > 0) {
        const before = engine.result();
        const turned = [...wanted];
        wanted.clear();
        for (const [dial, value] of turned) {
          const slider = sliderOf(before, dial);
          if (slider) engine.setDial(dial, toSi(value, unitFromCode(slider.unit)));
        }
        await engine.settled();
        showEntries(document, before, engine.result(), draw, turn);
        tell(TURNED);
      }
    } finally {
      busy = false;
    }
  }
  function turn(dial: string, value: number): void {
    wanted.set(dial, value);
    follow().catch(() => tell(STUCK));
  }
  return turn;
}

/** Frees the dials of a copy. */
export function turnDials(document: Document, draw: Draw): void {
  const inputs = Array.from(
    document.querySelectorAll<HTMLInputElement>('#copy > .entry[data-kind="dial"] .slider-view input'),
  );
  const status = document.createElement("p");
  status.className = "turned";
  status.setAttribute("role", "status");
  const embedded = (): EmbeddedCopy =>
    JSON.parse(document.getElementById("thumbrule-data")?.textContent ?? "null") as EmbeddedCopy;
  const turn = turning(document, embedded, draw, (sentence) => {
    if (status.textContent !== sentence) status.textContent = sentence;
  });
  if (inputs.length > 0) document.querySelector("body > header")?.append(status);
  for (const input of inputs) {
    const dial = input.closest<HTMLElement>(".entry")?.dataset.entry ?? "";
    input.disabled = false;
    // A range is followed while it moves, a typed number once it is finished.
    input.addEventListener(input.type === "range" ? "input" : "change", () => {
      const { valueAsNumber: value, min, max } = input;
      if (Number.isFinite(value)) turn(dial, Math.min(Number(max), Math.max(Number(min), value)));
    });
  }
}
