import type { Entry } from "../../../language/index.ts";
import type { Inputs } from "../../cell.ts";
import { cells } from "../../cells.ts";
import type { EntryPart } from "../../entry-kind.ts";

/** An answer, or the refusal. */
export function viewQuestion(_entry: Entry, key: string, inputs: Inputs): EntryPart | null {
  const answer = inputs.get(cells.answer(key));
  return answer.ok ? { finding: answer.value.finding, view: { kind: "answer", finding: answer.value.finding } } : null;
}
