#!/usr/bin/env node
// The command line of the program.
import { nodeSurface } from "./node-surface.ts";
import { runCommand } from "./run-command.ts";
import { writePieces } from "./write-pieces.ts";

// Who reads may stop early, as head does; that is no fault, and there is nobody left to tell.
for (const stream of [process.stdout, process.stderr])
  stream.on("error", (failure: NodeJS.ErrnoException) => {
    if (failure.code !== "EPIPE") process.exitCode = 1;
  });

const answer = await runCommand(process.argv.slice(2), nodeSurface(import.meta.url));
process.exitCode = answer.code;
if (answer.pieces) await writePieces(answer.pieces(), process.stdout);
else process.stdout.write(answer.stdout);
process.stderr.write(answer.stderr);
