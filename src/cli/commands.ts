// Every command, in the order in which help lists them. A new command is a file and a line here.
import type { Command } from "./command.ts";
import { ask } from "./commands/ask.ts";
import { cautions } from "./commands/cautions.ts";
import { check } from "./commands/check.ts";
import { compare } from "./commands/compare.ts";
import { exportTable } from "./commands/export-table.ts";
import { limits } from "./commands/limits.ts";
import { method } from "./commands/method.ts";
import { newWorkspace } from "./commands/new-workspace.ts";
import { read } from "./commands/read.ts";
import { report } from "./commands/report.ts";
import { share } from "./commands/share.ts";
import { trace } from "./commands/trace.ts";
import { verify } from "./commands/verify.ts";
import { words } from "./commands/words.ts";

export const commands: readonly Command[] = [
  newWorkspace,
  read,
  check,
  report,
  ask,
  trace,
  method,
  share,
  verify,
  compare,
  exportTable,
  words,
  limits,
  cautions,
];
