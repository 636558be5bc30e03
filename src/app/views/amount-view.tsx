import type { View } from "../../core/base/index.ts";
import { unitInWords } from "../../core/units/index.ts";
import { TraceList } from "./trace-list.tsx";

type Amount = Extract<View, { kind: "amount" }>;

/** A value as one ruled line: its name, its formula, its amount with uncertainty. */
export const AmountView = ({ view }: { readonly view: Amount }) => (
  <div class="amount-view">
    <p>
      <dfn>{view.name}</dfn> <code>{view.formula}</code> <strong>{view.amount}</strong>
      {view.unit === "" || view.unit === "1" ? null : <span class="for-readers"> in {unitInWords(view.unit)}</span>}
    </p>
    {view.trace.steps.length > 0 && <TraceList steps={view.trace.steps} />}
  </div>
);
