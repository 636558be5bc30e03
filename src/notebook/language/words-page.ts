// The language page, put together from what runs.
import { argumentsInWords, functionCatalogue, groupFunctions, signature } from "../../core/formula/index.ts";
import { unitCatalogue } from "../../core/units/index.ts";
import { entryKindIds } from "./entry-forms.ts";
import { kindsInWords, sentenceForms } from "./sentence-forms.ts";

const code = (text: string): string => `\`${text}\``;
const block = (kind: string, text: string): string => `\`\`\`${kind}\n${text}\n\`\`\``;

/** The page as Markdown: kinds of entry with their sentences, formulas, functions, units. */
export function wordsPage(): string {
  const kinds = entryKindIds.flatMap((kind) => [
    `## ${kind}`,
    kindsInWords[kind],
    ...sentenceForms
      .filter((each) => each.kind === kind)
      .map(({ form, says, example }) => `${code(form)}: ${says}.\n\n${block(kind, example)}`),
  ]);
  return [
    "# The words",
    "An entry stands between two lines of three backquotes; behind the first three stand its kind and its name. A name with spaces or hyphens goes in backquotes.",
    ...kinds,
    "## Formulas",
    "Amounts carry their units: `2.4 mm`, `3/32 in`, `410 kg/m3`, `12 %`. Operators are `+ - * / ^`, comparisons `= != < <= > >=` and `is`, `is not`, joined by `and`, `or`, `not`. `if … then … else …` chooses. `in UNIT` shows the result in a unit; after a number `in` is the inch unless a unit follows. `missing` is a missing value.",
    "### Functions",
    functionCatalogue
      .map((each) => `- ${code(signature(each))}: ${each.name}; ${argumentsInWords(each)}. ${code(each.example)}`)
      .join("\n"),
    "### Over groups",
    groupFunctions.map(({ id, name, example }) => `- ${code(`${id} of X by G`)}: ${name}. ${code(example)}`).join("\n"),
    "### Units",
    unitCatalogue
      .filter(({ shown }) => shown !== "")
      .map(
        ({ shown, words, spellings }) =>
          `- ${shown}: ${words[1]}${spellings.length > 0 ? ` (${spellings.slice(0, 6).map(code).join(", ")})` : ""}`,
      )
      .join("\n"),
    "",
  ].join("\n\n");
}
