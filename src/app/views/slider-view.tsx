// A dial: a labelled control of its own, turned by keys, by dragging or by typing.
import { useId } from "preact/hooks";
import type { View } from "../../core/base/index.ts";
import { unitForDisplay, unitInWords } from "../../core/units/index.ts";

type Slider = Extract<View, { kind: "slider" }>;

/** A dial with its range, its value as a number to type, and its unit in words for a screen reader. */
export const SliderView = ({ view, turn }: { readonly view: Slider; readonly turn: ((value: number) => void) | null }) => {
  const id = useId();
  const turned = (event: { readonly currentTarget: HTMLInputElement }) => {
    const value = event.currentTarget.valueAsNumber;
    if (Number.isFinite(value)) turn?.(Math.min(view.to, Math.max(view.from, value)));
  };
  const shared = { min: view.from, max: view.to, step: view.step, value: view.value, disabled: turn === null };
  return (
    <div class="slider-view">
      <label for={id}>{view.name}</label>
      <input {...shared} id={id} type="range" aria-valuetext={`${view.value} ${unitInWords(view.unit)}`} onInput={turned} />
      <input {...shared} type="number" aria-label={`${view.name} in ${unitInWords(view.unit)}`} onChange={turned} />
      <span aria-hidden="true">{unitForDisplay(view.unit)}</span>
      <small>from {view.from} to {view.to}</small>
    </div>
  );
};
