import { MarkupReader } from "./markup-reader.ts";
import { richString } from "./rich-string.ts";
import type { WorkbookTrouble } from "./workbook-trouble.ts";

/** The table of strings that the cells of an XLSX workbook point into. Source: ECMA-376 part 1, 18.4.9. */
export function sharedStrings(markup: string): readonly string[] | WorkbookTrouble {
  const reader = new MarkupReader(markup);
  const strings: string[] = [];
  for (let step = reader.next(); step !== "end"; step = reader.next())
    if (step === "open" && reader.name === "si") strings.push(richString(reader));
  return reader.trouble ?? strings;
}
