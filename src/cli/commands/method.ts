import type { Method } from "../../core/base/index.ts";
import { methods } from "../../notebook/engine/index.ts";
import { type Command, type CommandAnswer, UsageError } from "../command.ts";
import { methodAnswer } from "../method-answer.ts";
import { methodInWords, methodsInWords } from "../methods-in-words.ts";
import { programProblems } from "../program-problems.ts";

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

const listing = (named: string | undefined): CommandAnswer => {
  if (named === undefined) return { code: 0, json: methods.map(listed), text: methodsInWords(methods) };
  const found = methods.find(({ id }) => id === named);
  if (found) return { code: 0, json: listed(found), text: methodInWords(found) };
  const problem = { code: "unknown-method", sentence: programProblems["unknown-method"]({ name: named }) };
  return { code: 1, json: { problems: [problem] }, text: problem.sentence };
};

/** The catalogue of methods, or a run of them: JSON lines in, JSON lines out. */
export const method: Command = {
  name: "method",
  usage: "--list [METHOD] | < LINES",
  sentence: "The catalogue of methods; or JSON lines {id, method, inputs} on stdin.",
  options: { list: { type: "boolean" } },
  files: [0, 1],
  run: async ({ values, files }, surface) => {
    if (values["list"] === true) return listing(files[0]);
    if (files.length > 0) throw new UsageError("method --list [METHOD] | < LINES");
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
