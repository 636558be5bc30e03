// Typed syntax as the text a maker would write: reading it back gives the same syntax.
import { type Expression, printExpression, printName } from "../../core/formula/index.ts";
import type { AmountAt, EntrySyntax, NameAt, RecordsLine } from "./entry-syntax.ts";
import { printEntryName } from "./print-entry-name.ts";
import { printQuestion } from "./print-question.ts";
import { printRule } from "./print-rule.ts";
import { quotedText } from "./quoted-text.ts";

const amount = ({ value, unit }: AmountAt): string => (unit === null ? `${value}` : `${value} ${unit}`);
const file = (path: string): string => (/^[^\s"`,]+$/.test(path) ? path : quotedText(path));
const names = (list: readonly NameAt[]): string => list.map(({ name }) => printEntryName(name)).join(", ");
const where = (condition: Expression | null): string =>
  condition === null ? "" : ` where ${printExpression(condition)}`;
const piece = (text: string): string => (/^[\p{L}\p{N}_.-]+$/u.test(text) ? text : quotedText(text));

function recordsLine(line: RecordsLine): string {
  switch (line.says) {
    case "from":
      return `from ${file(line.file)}${line.sheet === null ? "" : ` sheet ${quotedText(line.sheet)}`}${line.table === null ? "" : ` table ${line.table}`}`;
    case "join":
      return `join ${file(line.file)} on ${printName(line.on.name)}`;
    case "piece-is":
      return `piece is ${printName(line.column.name)}`;
    case "pieces-share":
      return `pieces share ${printName(line.column.name)}`;
    case "finished-on":
      return `finished on ${printName(line.column.name)}`;
    case "correct":
      return `correct ${printName(line.column.name)} by ${printEntryName(line.by.name)}`;
    case "leave-out":
      return `leave out piece ${piece(line.piece)} because ${quotedText(line.because)}`;
  }
}

/** The body of an entry. Comments there are none; spaces and clauses come in our own order. */
export function printEntry(entry: EntrySyntax): string {
  switch (entry.kind) {
    case "records":
      return entry.lines.map(recordsLine).join("\n");
    case "columns":
      return entry.columns
        .map(({ name, expression }) => `${printName(name.name)} = ${printExpression(expression)}`)
        .join("\n");
    case "value":
      return printExpression(entry.expression);
    case "dial":
      return `${amount(entry.start)} from ${amount(entry.low)} to ${amount(entry.high)}${entry.step ? ` step ${amount(entry.step)}` : ""}`;
    case "question":
      return printQuestion(entry.question);
    case "rule":
      return printRule(entry.rule);
    case "rig":
      return `${printName(entry.reading.name)} against ${printName(entry.reference.name)} in ${file(entry.file)}${where(entry.where)}`;
    case "picture":
      return `${printExpression(entry.y)} against ${printExpression(entry.x)}${entry.by ? `, by ${printExpression(entry.by)}` : ""}${entry.of ? ` of ${printEntryName(entry.of.name)}` : ""}${where(entry.where)}`;
    case "lexicon":
      return entry.families.map(({ family, words }) => `${family}: ${words.join(", ")}`).join("\n");
    case "use":
      return `${names(entry.names)} from ${file(entry.file)}`;
    case "setting":
      return entry.dials.map(({ dial, amount: set }) => `${printName(dial.name)} ${amount(set)}`).join("\n");
  }
}
