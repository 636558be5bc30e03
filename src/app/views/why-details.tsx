// "Why": the method and why it was chosen, the records used and set aside, cautions, checks, numbers, and the way back.
import type { Answer } from "../../core/base/index.ts";
import { EstimateTable } from "./estimate-table.tsx";
import { TraceList } from "./trace-list.tsx";

const Records = ({ rows }: { readonly rows: Answer["rows"] }) => (
  <>
    <dt>Records</dt>
    <dd>
      {rows.used.length} used{rows.used.length > 0 && <>: {rows.used.map((row) => row.piece).join(", ")}</>}.
      {rows.setAside.length > 0 && (
        <ul class="set-aside">
          {rows.setAside.map(({ row, why }) => (
            <li key={`${row.table}-${row.row}-${why}`}>
              {row.piece}, set aside: {why}
            </li>
          ))}
        </ul>
      )}
    </dd>
  </>
);

/** The reasons behind an answer, opened in place. */
export const WhyDetails = ({ finding }: { readonly finding: Answer }) => (
  <details class="why-details">
    <summary>Why</summary>
    <dl>
      <dt>Method</dt>
      <dd>
        {finding.method.name}. {finding.method.chosenBecause}
      </dd>
      <dt>Source</dt>
      <dd>{finding.method.source.citation}</dd>
      <Records rows={finding.rows} />
      {finding.checks.length > 0 && (
        <>
          <dt>Checks</dt>
          <dd>
            <ul>
              {finding.checks.map((check) => (
                <li key={check.id}>
                  {check.name}: {check.sentence}
                </li>
              ))}
            </ul>
          </dd>
        </>
      )}
      {finding.seed === undefined ? null : (
        <>
          <dt>Seed</dt>
          <dd>{finding.seed}</dd>
        </>
      )}
    </dl>
    {finding.estimate.length > 0 && <EstimateTable estimates={finding.estimate} />}
    {finding.trace.steps.length > 0 && <TraceList steps={finding.trace.steps} />}
  </details>
);
