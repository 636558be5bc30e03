import { cautions as catalogue } from "../../core/base/index.ts";
import type { Command } from "../command.ts";

/** A caution's sentence with the names of its facts in place of facts. */
const withNames = (say: (facts: never) => string): string =>
  say(new Proxy({}, { get: (_, name) => (name === Symbol.toPrimitive ? undefined : `<${String(name)}>`) }) as never);

/** The catalogue of cautions, gravest first. */
export const cautions: Command = {
  name: "cautions",
  usage: "",
  sentence: "The catalogue of cautions, gravest first.",
  options: {},
  files: [0, 0],
  run: async () => {
    const list = Object.entries(catalogue).map(([code, say]) => ({
      code,
      sentence: withNames(say as (facts: never) => string),
    }));
    return { code: 0, json: list, text: list.map(({ code, sentence }) => `${code}: ${sentence}`).join("\n") };
  },
};
