// The command line as a whole process, against the runtime starting and doing nothing.
import { spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";
import { type BenchLine, benchLine } from "./bench-line.ts";

const root = fileURLToPath(new URL("../../", import.meta.url));
const run = (...words: readonly string[]) => {
  const { status, stderr } = spawnSync(process.execPath, words, { cwd: root, encoding: "utf8" });
  if (status !== 0) throw new Error(stderr);
};

/** `thumbrule report notebooks/stiffer-tops.md`, start to exit. */
export const commandReport = (): Promise<BenchLine> =>
  benchLine({
    name: "thumbrule report, whole process",
    baseline: "node, starting and ending",
    ours: () => run("dist/node/thumbrule.js", "report", "notebooks/stiffer-tops.md"),
    theirs: () => run("-e", "0"),
    rounds: 7,
  });
