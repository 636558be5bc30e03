// What can be wrong with the program or the disk rather than with a notebook: codes and sentences of the command line.
import type { AnyProblem } from "./problem-lines.ts";

/** The sentence of each code: what is so, what to do. */
export const programProblems = {
  "not-built": () => "The parts for a dated copy are not built. Run npm run build first.",
  "not-written": ({ file, reason }: { readonly file: string; readonly reason: string }) =>
    `${file} was not written for sure (${reason}). It holds what was there before, or the new text whole; write it again.`,
  "folder-taken": ({ folder }: { readonly folder: string }) =>
    `${folder} is there already and is not an empty folder, so nothing was put there. Name a new or an empty folder.`,
  "folder-not-made": ({ folder, reason }: { readonly folder: string; readonly reason: string }) =>
    `${folder} was not made for sure (${reason}): it is there whole, or not at all. Look, or choose another place.`,
  "file-exists": ({ file }: { readonly file: string }) =>
    `${file} is there already and was left as it is. Name another file with -o; --replace is for an earlier export.`,
  "unknown-method": ({ name }: { readonly name: string }) =>
    `There is no method ${name}. \`thumbrule method --list\` names them all.`,
  "not-json": ({ line }: { readonly line: number }) =>
    `Line ${line} is not one JSON object with id, method and inputs.`,
} as const;

export const notBuilt = (): AnyProblem => ({ code: "not-built", sentence: programProblems["not-built"]() });
/** The problem of a code, about a file where there is one. */
export function programProblem<C extends keyof typeof programProblems>(
  code: C,
  facts: Parameters<(typeof programProblems)[C]>[0],
  file?: string,
): AnyProblem {
  const sentence = (programProblems[code] as (facts: unknown) => string)(facts);
  return { code, sentence, ...(file === undefined ? {} : { file }) };
}
export const notWritten = (file: string, reason: string): AnyProblem => ({
  code: "not-written",
  file,
  sentence: programProblems["not-written"]({ file, reason }),
});
