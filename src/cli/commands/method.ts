import type { Method } from "../../core/base/index.ts";
import { methods } from "../../notebook/engine/index.ts";
import type { Command } from "../command.ts";
import { methodAnswer } from "../method-answer.ts";

/** A catalogue record without what runs. */
const listed = ({ id, name, answers, needs, inputs, fields, source }: Method) => ({
  id,
  name,
  answers,
  needs,
  inputs,
  fields,
  source,
});

/** The catalogue of methods, or a run of them: JSON lines in, JSON lines out. */
export const method: Command = {
  name: "method",
  usage: "--list | < LINES",
  sentence: "The catalogue of methods; or JSON lines {id, method, inputs} on stdin.",
  options: { list: { type: "boolean" } },
  files: [0, 0],
  run: async ({ values }, surface) => {
    if (values["list"] === true) {
      const list = methods.map(listed);
      return {
        code: 0,
        json: list,
        text: list.map(({ id, name, answers }) => `${id} (${answers}): ${name}`).join("\n"),
      };
    }
    const lines: string[] = [];
    let at = 0;
    for await (const line of surface.stdin()) {
      at++;
      if (line.trim() !== "") lines.push(JSON.stringify(methodAnswer(line, at, methods)));
    }
    // JSON lines are JSON lines, with --json and without.
    return { code: 0, json: undefined, text: lines.join("\n") };
  },
};
