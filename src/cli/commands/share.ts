import { datedCopy } from "../../notebook/share/index.ts";
import { type Command, textOption, textOptions, UsageError } from "../command.ts";
import { openNotebook, problemAnswer } from "../open-notebook.ts";
import { notBuilt, notWritten } from "../program-problems.ts";
import { sharingTools } from "../sharing-tools.ts";

/** The dated copy: one file, no network, everything in it recomputable. */
export const share: Command = {
  name: "share",
  usage: "NOTEBOOK -o FILE --date DATE [--without COLUMN…]",
  sentence: "The dated copy, to hand to an apprentice.",
  options: {
    output: { type: "string", short: "o" },
    date: { type: "string" },
    without: { type: "string", multiple: true },
  },
  files: [1, 100],
  run: async (given, surface) => {
    const [output, date] = [textOption(given, "output"), textOption(given, "date")];
    if (output === undefined || date === undefined) throw new UsageError("share needs -o FILE and --date DATE");
    const [file = "", ...more] = given.files;
    const without = [...textOptions(given, "without"), ...more];
    const opened = await openNotebook(file, surface, { asOf: date, placeless: true });
    if (!opened.ok) return opened.answer;
    const tools = await sharingTools(surface);
    if (tools === null) return problemAnswer([notBuilt()]);
    const { engine, text } = opened;
    const { copy, problems, warnings } = await datedCopy({
      ...tools,
      result: engine.result(),
      notebookText: text,
      tables: engine.tables(),
      date,
      version: surface.version,
      without,
    });
    engine.dispose();
    if (copy === null) return problemAnswer(problems);
    const written = await surface.write(output, copy.html);
    if (!written.ok) return problemAnswer([notWritten(output, written.reason)]);
    const bytes = Buffer.byteLength(copy.html);
    const remarks = warnings.map((warning) => `\n${warning.sentence}`).join("");
    return {
      code: 0,
      json: { file: output, digest: copy.digest, bytes, ...(warnings.length > 0 ? { warnings } : {}) },
      text: `${output}: ${bytes} bytes, digest ${copy.digest}${remarks}`,
    };
  },
};
