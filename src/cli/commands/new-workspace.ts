import { templateFiles } from "../../core/records/index.ts";
import type { Command } from "../command.ts";
import { exampleNotebook } from "../example-notebook.ts";
import { problemAnswer } from "../open-notebook.ts";
import { programProblem } from "../program-problems.ts";

/** A workspace to begin with. A folder that holds anything is left as it is. */
export const newWorkspace: Command = {
  name: "new",
  usage: "FOLDER",
  sentence: "A workspace with an example and the table templates, in a new or an empty folder.",
  options: {},
  files: [1, 1],
  run: async ({ files: [folder = ""] }, surface) => {
    const contents = new Map([["first-questions.md", exampleNotebook], ...templateFiles()]);
    const written = await surface.writeFolder(folder, contents);
    if (!written.ok)
      return problemAnswer([
        written.reason === "taken"
          ? programProblem("folder-taken", { folder }, folder)
          : programProblem("folder-not-made", { folder, reason: written.reason }, folder),
      ]);
    const files = [...contents.keys()].map((name) => `${folder.replace(/\/$/, "")}/${name}`);
    return { code: 0, json: { files }, text: files.join("\n") };
  },
};
