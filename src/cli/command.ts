// What a command is: a record with its line of help, its options, and a function from arguments to an answer.
import type { ParseArgsConfig } from "node:util";
import type { Surface } from "./surface.ts";

export type CommandOptions = NonNullable<ParseArgsConfig["options"]>;
export type Given = {
  readonly values: Readonly<Record<string, string | boolean | readonly (string | boolean)[] | undefined>>;
  readonly files: readonly string[];
};

/**
 * What a command comes to: the exit code, JSON for programs, text for people. 0 well, 1 the content has a problem. `pieces`: the JSON text
 * a piece at a time, in place of `json`, where one text of it could be too large.
 */
export type CommandAnswer = {
  readonly code: 0 | 1;
  readonly json: unknown;
  readonly text: string;
  readonly pieces?: () => Iterable<string>;
};

export type Command = {
  readonly name: string;
  /** After the name: "NOTEBOOK -o FILE --date DATE". */
  readonly usage: string;
  readonly sentence: string;
  readonly options: CommandOptions;
  /** How many arguments besides options: fewest and most. */
  readonly files: readonly [fewest: number, most: number];
  readonly run: (given: Given, surface: Surface) => Promise<CommandAnswer>;
};

/** The value of a text option; undefined when it was not given. */
export function textOption(given: Given, name: string): string | undefined {
  const value = given.values[name];
  return typeof value === "string" ? value : undefined;
}

/** The values of an option that may be given several times. */
export function textOptions(given: Given, name: string): readonly string[] {
  const value = given.values[name];
  return Array.isArray(value) ? value.filter((each): each is string => typeof each === "string") : [];
}

/** A command line that is not understood: exit code 2. */
export class UsageError extends Error {
  override readonly name = "UsageError";
}
