import { limits as stated } from "../../core/base/index.ts";
import type { Command } from "../command.ts";

/** The stated limits. */
export const limits: Command = {
  name: "limits",
  usage: "",
  sentence: "The limits of what is read and computed.",
  options: {},
  files: [0, 0],
  run: async () => {
    const list = Object.entries(stated).map(([id, { value, words }]) => ({ id, value, words }));
    return { code: 0, json: list, text: list.map(({ value, words }) => `${words}: ${value}`).join("\n") };
  },
};
