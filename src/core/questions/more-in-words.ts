import { levelAmong } from "./among-questions.ts";
import { recordsNeeded } from "./records-needed.ts";

/** "about 14 more instruments would tell", for an effect of ratio = estimate / standard error that goes on as it looks; as one of `asked` questions. */
export function moreInWords(ratio: number, records: number, parameters: number, asked = 1): string {
  const needed = recordsNeeded(ratio, records, parameters, 0.8, 1 - levelAmong(asked));
  if (needed === null || needed - records > 1000)
    return "If it goes on as it looks, more instruments than a shop builds would be needed to tell";
  const more = Math.max(1, needed - records);
  return `If it goes on as it looks, about ${more} more ${more === 1 ? "instrument" : "instruments"} would tell`;
}
