// What can be wrong with the program or the disk rather than with a notebook: codes and sentences of the command line.
import type { AnyProblem } from "./problem-lines.ts";

/** The sentence of each code: what is so, what to do. */
export const programProblems = {
  "not-built": () => "The parts for a dated copy are not built. Run npm run build first.",
  "not-written": ({ file, reason }: { readonly file: string; readonly reason: string }) =>
    `${file} was not written for sure (${reason}). It holds what was there before, or the new text whole; write it again.`,
  "not-json": ({ line }: { readonly line: number }) =>
    `Line ${line} is not one JSON object with id, method and inputs.`,
} as const;

export const notBuilt = (): AnyProblem => ({ code: "not-built", sentence: programProblems["not-built"]() });
export const notWritten = (file: string, reason: string): AnyProblem => ({
  code: "not-written",
  file,
  sentence: programProblems["not-written"]({ file, reason }),
});
