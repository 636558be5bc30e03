#!/usr/bin/env node
// The command line of the program.
import { nodeSurface } from "./node-surface.ts";
import { runCommand } from "./run-command.ts";

const { code, stdout, stderr } = await runCommand(process.argv.slice(2), nodeSurface(import.meta.url));
process.stdout.write(stdout);
process.stderr.write(stderr);
process.exitCode = code;
