// A question as text.
import type { QuestionSyntax } from "./entry-syntax.ts";
import { printEntryName } from "./print-entry-name.ts";
import { printLabel } from "./print-label.ts";
import { printPart } from "./print-part.ts";
import { quotedText } from "./quoted-text.ts";

function asked(question: QuestionSyntax): string {
  switch (question.asks) {
    case "relation": {
      const { allowingFor, within } = question;
      const clauses = [
        allowingFor.length > 0 ? `, allowing for ${allowingFor.map(printPart).join(" and ")}` : "",
        within ? `, within ${printPart(within)}` : "",
        question.powerLaw ? ", as a power law" : "",
      ];
      return `${printPart(question.y)} against ${question.x.map(printPart).join(" and ")}${clauses.join("")}`;
    }
    case "comparison":
      return `${printPart(question.y)} across ${printPart(question.across)}`;
    case "agreement":
      return `${printPart(question.a)} beside ${printPart(question.b)}`;
    case "words":
      return `words of ${printPart(question.notes)} across ${printPart(question.across)}`;
    case "word":
      return `${printPart(question.notes)} word ${quotedText(question.word)} against ${printPart(question.x)}`;
    case "prediction": {
      const given = question.when.map(({ x, is }) => `${printPart(x)} is ${printPart(is)}`).join(" and ");
      return `expect ${printPart(question.y)} when ${given}${question.group === null ? "" : ` for ${printLabel(question.group)}`}`;
    }
    case "ranking":
      return `rank ${printEntryName(question.table.name)} by ${printPart(question.expression)}`;
  }
}

/** The question as one line. */
export const printQuestion = (question: QuestionSyntax): string =>
  [
    asked(question),
    question.where ? ` where ${printPart(question.where)}` : "",
    question.by ? ` by ${printEntryName(question.by.name)}` : "",
    question.of ? ` of ${printEntryName(question.of.name)}` : "",
  ].join("");
