// From a command line to an exit code: arguments understood, one command run, its answer as JSON alone or as text.
import { parseArgs } from "node:util";
import { type Command, type CommandAnswer, type Given, UsageError } from "./command.ts";
import { commands } from "./commands.ts";
import { escaped } from "./escaped.ts";
import type { Surface } from "./surface.ts";

/** `pieces`: what `stdout` is, a piece at a time. */
export type Printed = {
  readonly code: 0 | 1 | 2;
  readonly stdout: string;
  readonly stderr: string;
  readonly pieces?: () => Iterable<string>;
};

const help = (): string =>
  [
    "thumbrule COMMAND [--json]",
    ...commands.map(({ name, usage, sentence }) => `  ${`${name} ${usage}`.trim()}\n      ${sentence}`),
  ].join("\n");

const usage = (message: string, command?: Command): Printed => ({
  code: 2,
  stdout: "",
  stderr: `${escaped(message)}\n${command ? `thumbrule ${`${command.name} ${command.usage}`.trim()}` : help()}\n`,
});

function understood(command: Command, args: readonly string[]): Given & { readonly json: boolean } {
  const { values, positionals } = parseArgs({
    args: [...args],
    options: { ...command.options, json: { type: "boolean" } },
    allowPositionals: true,
    strict: true,
  });
  const [fewest, most] = command.files;
  if (positionals.length < fewest || positionals.length > most)
    throw new UsageError(
      positionals.length < fewest ? "something is missing" : `${positionals[most] ?? ""} is one argument too many`,
    );
  return { values: values as Given["values"], files: positionals, json: values["json"] === true };
}

function printedPieces(code: 0 | 1, given: () => Iterable<string>): Printed {
  function* pieces() {
    for (const piece of given()) yield escaped(piece);
    yield "\n";
  }
  return {
    code,
    get stdout() {
      return [...pieces()].join("");
    },
    stderr: "",
    pieces,
  };
}

function printed(answer: CommandAnswer, json: boolean): Printed {
  if (json && answer.pieces) return printedPieces(answer.code, answer.pieces);
  if (answer.json === undefined)
    return { code: answer.code, stdout: answer.text === "" ? "" : `${escaped(answer.text)}\n`, stderr: "" };
  if (json) return { code: answer.code, stdout: `${escaped(JSON.stringify(answer.json, null, 2))}\n`, stderr: "" };
  return { code: answer.code, stdout: `${escaped(answer.text)}\n`, stderr: "" };
}

/** Runs one command line. Never throws for what was typed or what a file holds. */
export async function runCommand(args: readonly string[], surface: Surface): Promise<Printed> {
  const [name, ...rest] = args;
  if (name === undefined) return usage("A command is needed.");
  if (name === "help" || name === "--help" || name === "-h") return { code: 0, stdout: `${help()}\n`, stderr: "" };
  const command = commands.find((each) => each.name === name);
  if (!command) return usage(`There is no command ${name}.`);
  let given: ReturnType<typeof understood>;
  try {
    given = understood(command, rest);
  } catch (failure) {
    return usage(failure instanceof Error ? failure.message : "not understood", command);
  }
  try {
    return printed(await command.run(given, surface), given.json);
  } catch (failure) {
    if (failure instanceof UsageError) return usage(failure.message, command);
    throw failure;
  }
}
