// An answer: its sentence first, then cautions, the picture, and why. A refusal says what would be needed.
import type { Drawing, Finding } from "../../core/base/index.ts";
import { PictureView } from "./picture-view.tsx";
import { VerdictMark } from "./verdict-mark.tsx";
import { WhyDetails } from "./why-details.tsx";

/** A finding as the maker reads it. */
export const AnswerView = ({ finding, drawing }: { readonly finding: Finding; readonly drawing: Drawing | null }) => {
  if (finding.kind === "refused")
    return (
      <div class="answer-view" data-answer="refused">
        <p class="sentence">{finding.sentence}</p>
        {finding.needed === undefined ? null : <p>{finding.needed}</p>}
      </div>
    );
  return (
    <div class="answer-view" data-answer={finding.kind}>
      {finding.kind === "verdict" && <VerdictMark verdict={finding.verdict} />}
      <p class="sentence">{finding.sentence}</p>
      {finding.cautions.length > 0 && (
        <ul class="cautions" aria-label="Cautions">
          {finding.cautions.map((caution, key) => (
            <li key={key} data-code={caution.code}>
              {caution.sentence}
            </li>
          ))}
        </ul>
      )}
      {finding.picture === undefined ? null : <PictureView picture={finding.picture} drawing={drawing} />}
      <WhyDetails finding={finding} />
    </div>
  );
};
