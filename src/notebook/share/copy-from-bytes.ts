// Reads what is inside a dated copy, as data: nothing of the file is run, drawn or fetched.

import validate from "../../../data-schema/dated-copy.schema.json?validator";
import { limits } from "../../core/base/index.ts";
import type { CopyProblem } from "./copy-problems.ts";
import { copyProblem } from "./copy-problems.ts";
import type { EmbeddedCopy } from "./embedded-copy.ts";

const OPENING = '<script type="application/json" id="thumbrule-data">';
const CLOSING = "</script>";

export type ReadCopy = { readonly copy: EmbeddedCopy | null; readonly problems: readonly CopyProblem[] };

const failed = (problem: CopyProblem): ReadCopy => ({ copy: null, problems: [problem] });

function parsed(json: string): unknown {
  try {
    return JSON.parse(json) as unknown;
  } catch {
    return undefined;
  }
}

/** Text of the file; undefined where its bytes are not UTF-8. */
function decoded(bytes: Uint8Array): string | undefined {
  try {
    return new TextDecoder("utf-8", { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    return undefined;
  }
}

/** The data embedded in a copy, checked against their schema. */
export function copyFromBytes(bytes: Uint8Array): ReadCopy {
  if (bytes.length > limits.copyBytes.value)
    return failed(copyProblem("too-large", { limit: limits.copyBytes.value, found: bytes.length }));
  const text = decoded(bytes);
  const from = text?.indexOf(OPENING) ?? -1;
  if (text === undefined || from < 0 || text.indexOf(OPENING, from + 1) >= 0)
    return failed(copyProblem("not-a-copy", {}));
  const to = text.indexOf(CLOSING, from);
  const value = to < 0 ? undefined : parsed(text.slice(from + OPENING.length, to));
  if (value === undefined) return failed(copyProblem("not-a-copy", {}));
  if (!validate(value))
    return failed(copyProblem("bad-content", { where: validate.errors?.[0]?.instancePath || "the top" }));
  return { copy: value as EmbeddedCopy, problems: [] };
}
