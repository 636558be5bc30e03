// An answer: its sentence first, then the picture, what to mind most, and why. A refusal says what would be needed.
import type { Drawing, Finding } from "../../core/base/index.ts";
import { CautionList } from "./caution-list.tsx";
import { PictureView } from "./picture-view.tsx";
import { VerdictMark } from "./verdict-mark.tsx";
import { WhyDetails } from "./why-details.tsx";

/** Cautions stand gravest first; so many are read without opening anything. */
const GRAVEST = 2;

/** A verdict's word stands in its mark already. */
const afterTheWord = (sentence: string): string => {
  const rest = sentence.replace(/^(Kept|Broken|Can't tell yet): /, "");
  return rest.charAt(0).toUpperCase() + rest.slice(1);
};

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
      <p class="sentence">{finding.kind === "verdict" ? afterTheWord(finding.sentence) : finding.sentence}</p>
      {finding.picture === undefined ? null : (
        <PictureView
          picture={finding.picture}
          drawing={drawing}
          said={[finding.sentence, ...finding.cautions.map((caution) => caution.sentence)]}
        />
      )}
      <CautionList cautions={finding.cautions.slice(0, GRAVEST)} />
      <WhyDetails finding={finding} cautions={finding.cautions.slice(GRAVEST)} />
    </div>
  );
};
