import type { View } from "../../core/base/index.ts";
import { unitInWords } from "../../core/units/index.ts";
import { TraceList } from "./trace-list.tsx";

type Amount = Extract<View, { kind: "amount" }>;

/** A value's amount with its uncertainty, and the way back. Its name and formula stand before it on the same line. */
export const AmountView = ({ view }: { readonly view: Amount }) => (
  <div class="amount-view">
    <strong>
      {view.amount}
      {view.unit === "" || view.unit === "1" ? null : <span class="for-readers"> in {unitInWords(view.unit)}</span>}
    </strong>
    {view.trace.steps.length > 0 && <TraceList steps={view.trace.steps} />}
  </div>
);
