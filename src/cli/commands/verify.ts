import { copyFromEmbedded, copyLooks, verifyCopy } from "../../notebook/share/index.ts";
import type { Command } from "../command.ts";
import { missingFile } from "../open-notebook.ts";
import { problemLines } from "../problem-lines.ts";
import { recomputed, sha256, sharingTools } from "../sharing-tools.ts";

/** Recomputes a dated copy from the data inside it. */
export const verify: Command = {
  name: "verify",
  usage: "FILE",
  sentence: "Recomputes a dated copy from the data inside it and compares every number and the digest.",
  options: {},
  files: [1, 1],
  run: async ({ files: [file = ""] }, surface) => {
    const bytes = await surface.read(file);
    if (bytes === null) return { ...missingFile(file), json: { ok: false, ...(missingFile(file).json as object) } };
    const tools = await sharingTools(surface);
    const { ok, problems, notes, notShown, date } = await verifyCopy(bytes, {
      digest: sha256,
      compute: recomputed(surface.version),
      version: surface.version,
      ...(tools
        ? {
            rebuild: async (copy, result) =>
              (await copyFromEmbedded(copy, result, copyLooks(tools), tools.digest)).html,
          }
        : {}),
    });
    const remarks = notes.map((note) => note.sentence);
    const text = ok
      ? [
          "Nothing has been changed, and every number comes out again from the records inside.",
          ...remarks,
          `This does not show ${notShown.join(", ")}.`,
        ].join("\n")
      : problemLines(problems);
    return { code: ok ? 0 : 1, json: { ok, problems, notes, notShown, ...(date === undefined ? {} : { date }) }, text };
  },
};
