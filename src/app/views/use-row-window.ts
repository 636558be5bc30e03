import { type Signal, useSignal } from "@preact/signals";
import type { RefObject } from "preact";
import { useLayoutEffect } from "preact/hooks";

/** Rows to draw, those that fit on the screen, and how tall each is in pixels. */
export type RowWindow = {
  readonly first: number;
  readonly last: number;
  readonly screen: number;
  readonly height: number;
};

/** Rows drawn before and behind those in view; and by how many the window moves at once, so that not every pixel draws. */
const [BEYOND, STEP] = [12, 4];

function measured(frame: HTMLElement, before: RowWindow): RowWindow {
  const height = frame.querySelector("tr[data-position]")?.getBoundingClientRect().height || before.height;
  const screen = Math.max(1, Math.floor(frame.clientHeight / height) - 2);
  const top = Math.floor(frame.scrollTop / height / STEP) * STEP;
  return { first: Math.max(0, top - BEYOND), last: top + screen + 2 + BEYOND, screen, height };
}

/** The window of rows over what scrolls, and a function that looks where it is now. */
export function useRowWindow(scroller: RefObject<HTMLElement | null>): {
  readonly view: Signal<RowWindow>;
  readonly measure: () => void;
} {
  const view = useSignal<RowWindow>({ first: 0, last: 2 * BEYOND, screen: 1, height: 48 });
  function measure(): void {
    if (scroller.current === null) return;
    const [now, next] = [view.value, measured(scroller.current, view.value)];
    const same = next.first === now.first && next.last === now.last && Math.abs(next.height - now.height) < 0.01;
    if (!same) view.value = next;
  }
  useLayoutEffect(() => {
    const watcher = new ResizeObserver(measure);
    if (scroller.current !== null) watcher.observe(scroller.current);
    return () => watcher.disconnect();
  }, []);
  useLayoutEffect(measure);
  return { view, measure };
}
