// "Why": the method and why it was chosen, the records used and set aside, cautions, checks, numbers, and the way back.
import type { Answer } from "../../core/base/index.ts";
import { setAsideInWords } from "../../core/questions/index.ts";
import { CautionList } from "./caution-list.tsx";
import { EstimateTable } from "./estimate-table.tsx";
import { TraceList } from "./trace-list.tsx";

/** Pieces set aside, by reason, in the order of the first. */
function byReason(setAside: Answer["rows"]["setAside"]): readonly (readonly [string, readonly string[]])[] {
  const pieces = new Map<string, readonly string[]>();
  for (const { row, why } of setAside) pieces.set(why, [...(pieces.get(why) ?? []), row.piece]);
  return [...pieces];
}

const Records = ({ rows }: { readonly rows: Answer["rows"] }) => (
  <>
    <dt>Records</dt>
    <dd>
      {rows.used.length} used{rows.used.length > 0 && <>: {rows.used.map((row) => row.piece).join(", ")}</>}.
      {rows.setAside.length > 0 && (
        <ul class="set-aside">
          {byReason(rows.setAside).map(([why, pieces]) => (
            <li key={why}>
              {pieces.length} set aside, {setAsideInWords(why)}: {pieces.join(", ")}
            </li>
          ))}
        </ul>
      )}
    </dd>
  </>
);

/** The reasons behind an answer, opened in place. */
export const WhyDetails = ({
  finding,
  cautions,
}: {
  readonly finding: Answer;
  /** Those that do not stand open above. */
  readonly cautions: Answer["cautions"];
}) => (
  <details class="why-details">
    <summary>Why</summary>
    <CautionList cautions={cautions} />
    <dl>
      <dt>Method</dt>
      <dd>
        {finding.method.name}, because {finding.method.chosenBecause}.
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
