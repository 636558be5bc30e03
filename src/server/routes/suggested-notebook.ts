// A notebook to begin with, for a table of the folder: its text, and a file name that is free.
import { columnsFromTable } from "../../core/columns/index.ts";
import { descriptionFromJson, readRecords } from "../../core/records/index.ts";
import { descriptionPath } from "../../notebook/engine/index.ts";
import { columnSketches, firstNotebook, recordsEntry, tableNameOf } from "../../notebook/language/index.ts";
import type { Workspace } from "../workspace/workspace.ts";

export type SuggestedNotebook = { readonly file: string; readonly text: string; readonly entry: string };

async function freeNotebook(workspace: Workspace, stem: string): Promise<string> {
  const taken = new Set((await workspace.notebooks()).map(({ file }) => file.toLowerCase()));
  let file = `${stem}.md`;
  for (let count = 2; taken.has(file.toLowerCase()); count++) file = `${stem}-${count}.md`;
  return file;
}

/** `entry`: the records entry alone, to add to a notebook that there is. Of a file with several tables, the first is begun with. */
export async function suggestedNotebook(
  workspace: Workspace,
  file: string,
  bytes: Uint8Array,
): Promise<SuggestedNotebook | null> {
  const about = await workspace.read(descriptionPath(file));
  const described = about === null ? null : descriptionFromJson(new TextDecoder().decode(about));
  const said = described?.ok ? described.value : {};
  const { tables } = await readRecords(bytes, file, said.read, said);
  const [table] = tables;
  if (table === undefined) return null;
  const place = { file, ...(tables.length > 1 ? { table: 1 } : {}) };
  const columns = columnSketches(columnsFromTable(table, file, tableNameOf(file), said));
  return {
    file: await freeNotebook(workspace, tableNameOf(file).replaceAll("_", "-")),
    text: firstNotebook({ ...place, columns }),
    entry: recordsEntry(place),
  };
}
