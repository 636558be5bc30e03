// A notebook to begin with, for a table that was just brought in: a title, the table, and a first question made from its columns.
import { columnName } from "../../core/columns/index.ts";
import type { ColumnSketch } from "./column-sketches.ts";
import { firstQuestion } from "./first-question.ts";
import { quotedText } from "./quoted-text.ts";

/** `file`: where the table lies ("records/tops.csv"). `sheet`, `table`: which one of it, where it has several; `table` from 1. */
export type FirstTable = {
  readonly file: string;
  readonly sheet?: string;
  readonly table?: number;
  readonly columns: readonly ColumnSketch[];
};

const stemOf = (file: string) => file.slice(file.lastIndexOf("/") + 1).replace(/\.[^.]*$/, "");

/** The name of a table: its file's in small letters, with a letter at the front. */
export function tableNameOf(file: string): string {
  const name = columnName(stemOf(file));
  return /^\p{L}/u.test(name) ? name : `records_${name}`;
}

/** The lines of a records entry: which file, and which table of it. */
export function recordsEntry({ file, sheet, table }: Omit<FirstTable, "columns">, name = tableNameOf(file)): string {
  const plain = /^[^\s"`,]+$/.test(file);
  const place = [
    sheet === undefined ? "" : ` sheet ${quotedText(sheet)}`,
    table === undefined ? "" : ` table ${table}`,
  ].join("");
  return `\`\`\`records ${name}\nfrom ${plain ? file : quotedText(file)}${place}\n\`\`\`\n`;
}

/** Words of a header within a sentence of prose: what Markdown would take for a mark of its own stands behind a backslash. */
const inProse = (text: string) => text.replace(/[\\`*_[\]<>&!#~|]/g, "\\$&");

/** The text of the notebook. Every name in it is one that the table has. */
export function firstNotebook(first: FirstTable): string {
  const name = tableNameOf(first.file);
  const question = firstQuestion(first.columns);
  const asked =
    question === null
      ? "There is no column yet that could answer a question.\n"
      : `${inProse(question.prose)}\n\n\`\`\`question first-look\n${question.sentence}\n\`\`\`\n`;
  return [
    `---\ntitle: First look at ${name.replaceAll("_", " ")}\n---\n`,
    `These are the records of ${inProse(first.file)} as they were brought in.\n`,
    "\n",
    recordsEntry(first, name),
    "\n",
    asked,
  ].join("");
}
