// What only the maker can say of a file: each question a sentence with its answers, and what each would make of the cells.
import type { ImportAnswers } from "../../core/records/index.ts";
import type { AskedQuestion } from "../state/import-state.ts";

export type ImportQuestionsProps = {
  readonly questions: readonly AskedQuestion[];
  readonly answer: (id: string, choice: number) => void;
};

/** The open and the answered questions. */
export const ImportQuestions = ({ questions, answer }: ImportQuestionsProps) =>
  questions.length === 0 ? null : (
    <section class="import-questions" aria-labelledby="import-questions">
      <h2 id="import-questions">Only you can say</h2>
      {questions.map(({ question, chosen }) => (
        <fieldset key={question.id}>
          <legend>{question.sentence}</legend>
          {question.choices.map(({ label }, place) => (
            <label key={label}>
              <input
                type="radio"
                name={question.id}
                checked={chosen === place}
                onChange={() => answer(question.id, place)}
              />
              <bdi>{label}</bdi>
            </label>
          ))}
        </fieldset>
      ))}
    </section>
  );

const ENCODINGS = new Map([
  ["windows-1252", "letters are Western European"],
  ["utf-8", "letters are UTF-8"],
]);

/** The answers that are remembered, in words. */
function inWords({ read, about }: ImportAnswers): string {
  const aliases = Object.values(read.aliases ?? {}).reduce((sum, names) => sum + Object.keys(names).length, 0);
  return [
    read.encoding === undefined ? "" : (ENCODINGS.get(read.encoding) ?? `letters are ${read.encoding}`),
    read.decimal === undefined ? "" : `the ${read.decimal === "," ? "comma" : "point"} is decimal`,
    read.dayFirst === undefined ? "" : `the ${read.dayFirst ? "day" : "month"} comes first`,
    read.noteNames === undefined ? "" : `note names are ${read.noteNames === "german" ? "German" : "English"}`,
    aliases === 0 ? "" : `${aliases} ${aliases === 1 ? "spelling has" : "spellings have"} a name`,
    (about.repeats ?? []).length === 0
      ? ""
      : `${about.repeats?.map(({ name }) => name).join(", ")} is a mean of readings`,
    about.oneRowPer === undefined ? "" : `rows with one ${about.oneRowPer} are readings of one piece`,
  ]
    .filter((part) => part !== "")
    .join("; ");
}

/** Whose answers a file was read with, and the way to answer afresh. */
export const ImportRemembered = ({
  from,
  answers,
  askAgain,
}: {
  readonly from: string;
  readonly answers: ImportAnswers;
  readonly askAgain: () => void;
}) => {
  const words = inWords(answers);
  return words === "" ? null : (
    <p class="import-remembered">
      Read as you answered before ({from}): {words}.{" "}
      <button type="button" onClick={askAgain}>
        Ask me again
      </button>
    </p>
  );
};
