import type { ReadOptions } from "../read-options.ts";
import { aliasKey } from "../readers/alias-key.ts";
import { type Asker, choice, listed, quoted } from "./asker.ts";
import { spellingClusters } from "./spelling-clusters.ts";

const MOST_CLUSTERS = 50;
const aliasesFor = (column: string, pairs: readonly (readonly [string, string])[]): ReadOptions => ({
  aliases: Object.fromEntries([[column, Object.fromEntries(pairs)]]),
});

/** Spellings of one column: one question for each set of them. */
export const spellingQuestions: Asker = ({ tables, warnings }) =>
  warnings
    .filter(({ code }) => code === "spelling-varies")
    .flatMap(({ table = 1, col = 0 }) => {
      const column = tables[table - 1]?.columns[col - 1];
      if (column === undefined) return [];
      return spellingClusters(column).map((cluster) => {
        const texts = cluster.map(({ text }) => text);
        const told = new Set(texts.map(aliasKey)).size === texts.length;
        const same = texts.map((name) =>
          choice(
            `They all mean ${quoted(name)}`,
            aliasesFor(
              column.name,
              texts.map((text) => [text, name]),
            ),
          ),
        );
        // Spellings that differ by case alone cannot be told apart by aliases, so only one name can be chosen.
        const apart = choice(
          "They are different things",
          aliasesFor(
            column.name,
            texts.map((text) => [text, text]),
          ),
        );
        return {
          id: `spelling ${JSON.stringify([column.name, ...[...texts].sort()])}`,
          code: "spelling-varies",
          sentence: `Do these mean the same in ${quoted(column.name)}? ${listed(
            cluster.map(({ text, count }) => `${quoted(text)} (${count} ${count === 1 ? "record" : "records"})`),
          )}.`,
          columns: [column.name],
          choices: told ? [...same, apart] : same,
        };
      });
    })
    .slice(0, MOST_CLUSTERS);
