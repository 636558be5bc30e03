// The numbers behind the sentence: each with its interval and unit.
import type { Estimate } from "../../core/base/index.ts";
import { numberInWords, unitForDisplay } from "../../core/units/index.ts";
import { ScrollBox } from "./scroll-box.tsx";

/** How finely a number is shown: by its standard error, else by the width of its interval. */
const fineness = (estimate: Estimate) => estimate.standardError ?? (estimate.high - estimate.low) / 4;
const shown = (value: number, estimate: Estimate) =>
  numberInWords(value, fineness(estimate) > 0 ? fineness(estimate) : null);

/** Estimates as a table. */
export const EstimateTable = ({ estimates }: { readonly estimates: readonly Estimate[] }) => (
  <ScrollBox label="Numbers behind the answer">
    <table class="estimate-table">
      <caption>The numbers behind the sentence</caption>
      <thead>
        <tr>
          <th scope="col">what</th>
          <th scope="col">value</th>
          <th scope="col">from</th>
          <th scope="col">to</th>
          <th scope="col">unit</th>
          <th scope="col">interval</th>
        </tr>
      </thead>
      <tbody>
        {estimates.map((estimate) => (
          <tr key={estimate.name}>
            <th scope="row">{estimate.name}</th>
            <td>{shown(estimate.value, estimate)}</td>
            <td>{shown(estimate.low, estimate)}</td>
            <td>{shown(estimate.high, estimate)}</td>
            <td>{estimate.unit === "1" ? "none" : unitForDisplay(estimate.unit)}</td>
            <td>{Number((estimate.level * 100).toPrecision(4))} %</td>
          </tr>
        ))}
      </tbody>
    </table>
  </ScrollBox>
);
