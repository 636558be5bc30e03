import { sourceText } from "../source/source-text.ts";
import { type Asker, choice } from "./asker.ts";

const ENCODINGS = new Map([
  ["windows-1252", "Western European (Windows-1252)"],
  ["utf-8", "UTF-8"],
  ["utf-16le", "UTF-16, low byte first"],
  ["utf-16be", "UTF-16, high byte first"],
]);
const PROBE = 64 * 1024;
const AROUND = 24;

/** The words around the first letter beyond ASCII, or the beginning. */
function excerpt(text: string): string {
  const at = Math.max(0, text.search(/[^\t\n\r -~]/));
  const line = text.slice(text.lastIndexOf("\n", at) + 1).split(/[\r\n]/, 1)[0] ?? "";
  const place = at - text.lastIndexOf("\n", at) - 1;
  return line.slice(Math.max(0, place - AROUND), place + AROUND).trim();
}

/** Whether the letters are right, each encoding shown by an excerpt in it. */
export const encodingQuestion: Asker = ({ warnings }, options, bytes) => {
  if (options.encoding !== undefined || !warnings.some(({ code }) => code === "encoding-guessed")) return [];
  const guess = sourceText(bytes).encoding;
  const head = bytes.subarray(0, PROBE);
  // Half of a file in one-byte letters is no text at all in two-byte ones: only its likes are offered.
  const wide = guess.startsWith("utf-16");
  const others = [...ENCODINGS.keys()].filter((name) => name !== guess && name.startsWith("utf-16") === wide);
  return [
    {
      id: "encoding",
      code: "encoding-guessed",
      sentence: "Are the letters right? The file does not say how they are stored.",
      columns: [],
      choices: [guess, ...others].map((name) =>
        choice(`${ENCODINGS.get(name)}: ${excerpt(sourceText(head, name).text)}`, { encoding: name }),
      ),
    },
  ];
};
