#!/usr/bin/env node
// The command line of the program.
import { nodeSurface } from "./node-surface.ts";
import { runCommand } from "./run-command.ts";

// Who reads may stop early, as head does; that is no fault, and there is nobody left to tell.
for (const stream of [process.stdout, process.stderr])
  stream.on("error", (failure: NodeJS.ErrnoException) => {
    if (failure.code !== "EPIPE") process.exitCode = 1;
  });

const { code, stdout, stderr } = await runCommand(process.argv.slice(2), nodeSurface(import.meta.url));
process.stdout.write(stdout);
process.stderr.write(stderr);
process.exitCode = code;
