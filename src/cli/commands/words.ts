import { functionCatalogue, groupFunctions, signature } from "../../core/formula/index.ts";
import { unitCatalogue } from "../../core/units/index.ts";
import { entryKinds, methods } from "../../notebook/engine/index.ts";
import type { Command } from "../command.ts";

const entries = () =>
  Object.values(entryKinds).map(({ id, title, sentence, example }) => ({ id, title, sentence, example }));
const section = (title: string, lines: readonly string[]): string =>
  [title, ...lines.map((line) => `  ${line.replaceAll("\n", "\n  ")}`)].join("\n");

/** The language page, out of the catalogues that run. */
export const words: Command = {
  name: "words",
  usage: "",
  sentence: "The language: entries, functions, units and methods.",
  options: {},
  files: [0, 0],
  run: async () => {
    const functions = [
      ...functionCatalogue.map((each) => ({
        name: each.id,
        written: signature(each),
        says: each.name,
        example: each.example,
      })),
      ...groupFunctions.map((each) => ({
        name: each.id,
        written: `${each.id} of X by G`,
        says: each.name,
        example: each.example,
      })),
    ];
    const units = unitCatalogue.map(({ code }) => code);
    const named = methods.map(({ id, name }) => ({ id, name }));
    const json = { entries: entries(), functions, units, methods: named };
    const text = [
      section(
        "Entries",
        json.entries.map(
          ({ title, sentence, example }) =>
            `${title}: ${sentence}\n${example
              .split("\n")
              .map((line) => `    ${line}`)
              .join("\n")}`,
        ),
      ),
      section(
        "Functions",
        functions.map(({ written, says }) => `${written}: ${says}`),
      ),
      section("Units", [units.join("  ")]),
      section(
        "Methods",
        named.map(({ id, name }) => `${id}: ${name}`),
      ),
    ].join("\n\n");
    return { code: 0, json, text };
  },
};
