// The picture of an answer, by its kind. A new kind of answer does not compile until it has said how it is drawn.
import type { Answer, AnswerKind, Picture } from "../base/index.ts";
import type { PictureColumns } from "./picture-columns.ts";
import { pictureOfAgreement } from "./picture-of-agreement.ts";
import { pictureOfComparison } from "./picture-of-comparison.ts";
import { pictureOfPrediction } from "./picture-of-prediction.ts";
import { pictureOfRanking } from "./picture-of-ranking.ts";
import { pictureOfRelation } from "./picture-of-relation.ts";
import { pictureOfRig } from "./picture-of-rig.ts";
import { pictureOfVerdict } from "./picture-of-verdict.ts";
import { pictureOfWords } from "./picture-of-words.ts";

const drawn: { readonly [K in AnswerKind]: (finding: Answer, columns: PictureColumns) => Picture | undefined } = {
  relation: pictureOfRelation,
  comparison: pictureOfComparison,
  agreement: pictureOfAgreement,
  prediction: pictureOfPrediction,
  ranking: pictureOfRanking,
  words: pictureOfWords,
  verdict: pictureOfVerdict,
  rig: pictureOfRig,
};

/** What to draw for an answer; undefined where its columns leave nothing to draw. Every number is in the unit of display. */
export const pictureOf = (finding: Answer, columns: PictureColumns): Picture | undefined =>
  drawn[finding.kind](finding, columns);
