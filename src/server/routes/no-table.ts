// Refusals of an import that come from reading: the sentences stand in the catalogues of core.
import { type Refusal, refusals } from "../../core/base/index.ts";
import { type ReadResult, readingWarnings } from "../../core/records/index.ts";

/** A file in which there is no table, with what the reader says of it. */
export const noTable = ({ warnings }: ReadResult): Response =>
  Response.json(
    { problems: warnings.map(({ code }) => ({ code, sentence: readingWarnings.get(code) ?? code })) },
    { status: 422 },
  );

/** A description beside the table that would have to be written over without being understood. */
export const notUnderstood = (file: string, { code, facts }: Refusal): Response =>
  Response.json(
    { problems: [{ code, sentence: (refusals[code] as (facts: unknown) => string)(facts), file }] },
    { status: 422 },
  );
