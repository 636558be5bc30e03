import { functionCatalogue, groupFunctions, signature } from "../../core/formula/index.ts";
import { unitCatalogue } from "../../core/units/index.ts";
import { entryKinds, methods } from "../../notebook/engine/index.ts";
import { sentenceForms, wordsPage } from "../../notebook/language/index.ts";
import type { Command } from "../command.ts";

/** The language page, out of the catalogues that run; as JSON the same by sort. */
export const words: Command = {
  name: "words",
  usage: "",
  sentence: "The language: entries, sentences, functions, units and methods.",
  options: {},
  files: [0, 0],
  run: async () => {
    const named = methods.map(({ id, name }) => ({ id, name }));
    const json = {
      entries: Object.values(entryKinds).map(({ id, title, sentence, example }) => ({ id, title, sentence, example })),
      sentences: sentenceForms,
      functions: [
        ...functionCatalogue.map((each) => ({
          name: each.id,
          written: signature(each),
          says: each.name,
          example: each.example,
        })),
        ...groupFunctions.map(({ id, name, example }) => ({
          name: id,
          written: `${id} of X by G`,
          says: name,
          example,
        })),
      ],
      units: unitCatalogue.map(({ code }) => code),
      methods: named,
    };
    const listed = named.map(({ id, name }) => `- \`${id}\`: ${name}`).join("\n");
    return { code: 0, json, text: `${wordsPage()}\n## Methods\n\n${listed}` };
  },
};
