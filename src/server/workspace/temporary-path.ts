// What a save writes before it has its name: hidden, beside, and with the number of the process that wrote it.
import { randomBytes } from "node:crypto";
import { basename, dirname, join } from "node:path";
import { pid } from "node:process";

/** The names that `temporaryPath` gives, and the process number in them. */
export const TEMPORARY = /^\..+\.(\d+)-[0-9a-f]{12}\.saving$/;

/** A path beside `path` that nothing else has. */
export const temporaryPath = (path: string): string =>
  join(dirname(path), `.${basename(path).slice(0, 200)}.${pid}-${randomBytes(6).toString("hex")}.saving`);
