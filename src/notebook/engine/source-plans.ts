// The cells of a file: its bytes, its description and the log of its edits beside it, and its reading. Shared by all entries that name the file.
import { type CellPlan, computed, needs } from "./cell.ts";
import { cells, type FileReading } from "./cells.ts";
import type { FileTools } from "./file-tools.ts";
import type { Surroundings } from "./surroundings.ts";

/** "records/tops.csv" -> "records/tops.about.json". */
export const descriptionPath = (path: string): string => path.replace(/\.[^./]*$/, "") + ".about.json";

/** "records/tops.csv" -> "records/tops.csv.edits.jsonl". */
export const editsPath = (path: string): string => `${path}.edits.jsonl`;

const bytesPlan = (path: string, around: Surroundings): CellPlan => ({
  cell: cells.bytes(path),
  says: path,
  needs: [],
  key: `bytes ${around.generation(path)}`,
  base: 0,
  run: async () => computed(await around.readFile(path)),
});

/** Plans for one file: bytes of table, description and edits, and the reading of all. */
export function sourcePlans(path: string, around: Surroundings): readonly CellPlan[] {
  const parts = [path, descriptionPath(path), editsPath(path)];
  return [
    ...parts.map((part) => bytesPlan(part, around)),
    {
      cell: cells.reading(path),
      says: path,
      needs: parts.map((part) => needs(cells.bytes(part))),
      key: "reading",
      base: 0,
      run: async (inputs) => {
        const [bytes, described, edits] = parts.map((part) => {
          const read = inputs.get(cells.bytes(part));
          return read.ok ? read.value : null;
        });
        return computed(await fileReading(around.tools, path, { bytes, described, edits }));
      },
    },
  ];
}

type Bytes = Uint8Array | null | undefined;
type FileParts = { readonly bytes: Bytes; readonly described: Bytes; readonly edits: Bytes };
const UNREAD: FileReading = { result: null, description: null, edits: [], unplaced: 0, faulty: null };

/** A file read by its description, with its edits; a description that is not understood is said, and the file is read without it. */
async function fileReading(
  tools: FileTools["tables"],
  path: string,
  { bytes, described, edits }: FileParts,
): Promise<FileReading> {
  if (!bytes || tools === null) return UNREAD;
  const about = described ? tools.descriptionFromJson(new TextDecoder().decode(described)) : null;
  const said = about?.ok ? about.value : null;
  const read = edits
    ? await tools.editedRecords(bytes, path, said?.read ?? {}, tools.editLogFromBytes(edits), said ?? {})
    : { result: await tools.readRecords(bytes, path, said?.read, said ?? {}), tables: [], problems: [] };
  const { result, tables, problems } = read;
  const description = tools.descriptionWithUsual(result.tables, said);
  const reading = { result, description, edits: tables, unplaced: problems.length, faulty: null };
  if (!about || about.ok) return reading;
  const { place = "", reason = "" } = about.refusal.facts as { place?: string; reason?: string };
  return { ...reading, faulty: { file: descriptionPath(path), place, reason } };
}
