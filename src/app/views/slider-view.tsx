// A dial: a control of its own beside its name, turned by keys, by dragging or by typing.
import type { View } from "../../core/base/index.ts";
import { unitForDisplay, unitInWords } from "../../core/units/index.ts";

type Slider = Extract<View, { kind: "slider" }>;

/** A dial with its range, its value as a number to type, and its unit in words for a screen reader. */
export const SliderView = ({
  view,
  turn,
}: {
  readonly view: Slider;
  readonly turn: ((value: number) => void) | null;
}) => {
  const turned = (event: { readonly currentTarget: HTMLInputElement }) => {
    const value = event.currentTarget.valueAsNumber;
    if (Number.isFinite(value)) turn?.(Math.min(view.to, Math.max(view.from, value)));
  };
  const shared = { min: view.from, max: view.to, step: "any", value: view.value, disabled: turn === null };
  const words = unitInWords(view.unit);
  return (
    <div class="slider-view">
      <span aria-hidden="true">{view.from}</span>
      <input
        {...shared}
        step={view.step}
        type="range"
        aria-label={view.name}
        aria-valuetext={`${view.value} ${words}`}
        onInput={turned}
      />
      <span aria-hidden="true">{view.to}</span>
      <input {...shared} type="number" aria-label={`${view.name} in ${words}`} onChange={turned} />
      <span aria-hidden="true">{unitForDisplay(view.unit)}</span>
    </div>
  );
};
