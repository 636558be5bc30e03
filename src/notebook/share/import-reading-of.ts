// Everything the page shows of a file that may be brought in: how it was read with the answers so far, and what is still asked.
import { repeatedReadings } from "../../core/columns/index.ts";
import type { ImportAnswers, ImportQuestion, ImportReading, ReadResult } from "../../core/records/index.ts";
import { openQuestions, rawTextOf, readingPreview } from "../../core/records/index.ts";

export type ReadForImport = {
  readonly bytes: Uint8Array;
  readonly result: ReadResult;
  readonly answers: ImportAnswers;
  readonly remembered: string | null;
  readonly exists: boolean;
};

/** Questions about several readings of one thing. An answer to either of them that says no is an empty list of repeats. */
function repeatQuestions({ tables }: ReadResult, { about }: ImportAnswers): readonly ImportQuestion[] {
  const found = tables.slice(0, 1).flatMap(repeatedReadings);
  const inColumns = found.filter(({ code }) => code === "readings-in-columns");
  const inRows = found.filter(({ code }) => code === "readings-in-rows");
  const no = { label: "No, each stands for itself", answers: { about: { repeats: [] } } };
  const questions: ImportQuestion[] = [];
  if (inColumns.length > 0 && about.repeats === undefined)
    questions.push({
      id: "readings-in-columns",
      code: "readings-in-columns",
      sentence: inColumns.map(({ sentence }) => sentence).join(" "),
      columns: inColumns.flatMap(({ columns }) => columns),
      choices: [
        {
          label: "Yes, take their mean",
          answers: { about: { repeats: inColumns.flatMap(({ description }) => description.repeats ?? []) } },
        },
        no,
      ],
    });
  if (about.oneRowPer === undefined && (about.repeats === undefined || inColumns.length > 0))
    for (const { code, sentence, columns, description } of inRows)
      questions.push({
        id: code,
        code,
        sentence,
        columns,
        choices: [{ label: "Yes, they are readings of one piece", answers: { about: description } }, no],
      });
  return questions;
}

/** What the page is shown of a file. */
export function importReadingOf({ bytes, result, answers, remembered, exists }: ReadForImport): ImportReading {
  const fromText = result.setAside.some(({ record, sheet }) => record !== undefined && sheet === undefined);
  const rawOf = fromText ? rawTextOf(bytes, answers.read) : undefined;
  return {
    file: result.file,
    answers,
    remembered,
    ...readingPreview(result, rawOf),
    questions: [...openQuestions(result, answers.read, bytes), ...repeatQuestions(result, answers)],
    exists,
  };
}
