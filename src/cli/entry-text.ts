// One entry's answer as text for people: the sentence first, then why.
import type { Answer, Finding } from "../core/base/index.ts";
import { setAsideInWords } from "../core/questions/index.ts";
import { unitForDisplay } from "../core/units/index.ts";
import type { EntryResult } from "../notebook/engine/index.ts";

const verdicts = { kept: "Kept", broken: "Broken", "cannot-tell": "Can't tell yet" } as const;

/** Records set aside by reason, in the order of their first: how many, and which. */
function setAsideText(setAside: Answer["rows"]["setAside"]): string {
  const pieces = new Map<string, string[]>();
  for (const { row, why } of setAside) {
    const names = pieces.get(why);
    if (names) names.push(row.piece);
    else pieces.set(why, [row.piece]);
  }
  return [...pieces]
    .map(
      ([why, names]) =>
        `${setAsideInWords(why)} (${names.slice(0, 6).join(", ")}${names.length > 6 ? ` and ${names.length - 6} more` : ""})`,
    )
    .join("; ");
}

function why(answer: Answer): readonly string[] {
  const { used, setAside } = answer.rows;
  return [
    ...answer.cautions.map((caution) => `- ${caution.sentence}`),
    `Method: ${answer.method.name}, because ${answer.method.chosenBecause}. ${answer.method.source.citation}`,
    `Records: ${used.length} take part${setAside.length > 0 ? `; ${setAside.length} set aside: ${setAsideText(setAside)}` : ""}.`,
  ];
}

/** A finding in words, line by line. */
export function findingText(finding: Finding): string {
  if (finding.kind === "refused") return [finding.sentence, ...(finding.needed ? [finding.needed] : [])].join("\n");
  const word =
    finding.kind === "verdict" && !finding.sentence.startsWith(verdicts[finding.verdict])
      ? `${verdicts[finding.verdict]}. `
      : "";
  return [`${word}${finding.sentence}`, ...why(finding)].join("\n");
}

/** An entry under its name. Prose entries and pictures without an answer say nothing here. */
export function entryText(entry: EntryResult): string {
  const head = `${entry.kind} ${entry.name}`;
  const { view } = entry;
  const own = entry.problems.map((problem) => problem.sentence);
  const under = (lines: readonly string[]): string =>
    [head, ...lines.flatMap((line) => line.split("\n")).map((line) => `  ${line}`)].join("\n");
  if (entry.finding) return under([entry.asked.trim(), findingText(entry.finding), ...own]);
  if (view.kind === "amount") return under([`${view.formula} = ${view.amount}`, ...own]);
  if (view.kind === "slider")
    return under([`stands at ${view.value} ${unitForDisplay(view.unit)}, from ${view.from} to ${view.to}`, ...own]);
  if (view.kind === "picture") return under([view.picture.description, ...own]);
  if (entry.table) {
    const { rowCount, columns, leftOut, notes } = entry.table;
    const named = columns
      .map((column) => `${column.name}${column.unit === "1" ? "" : ` (${unitForDisplay(column.unit)})`}`)
      .join(", ");
    return under([
      `${rowCount} records: ${named}`,
      ...leftOut.map((each) => `left out: ${each.piece}, ${each.why}`),
      ...notes,
      ...own,
    ]);
  }
  return own.length > 0 ? under(own) : "";
}
