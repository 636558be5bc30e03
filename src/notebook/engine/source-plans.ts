// The cells of a file: its bytes, its description beside it, and its reading. Shared by all entries that name the file.
import { type CellPlan, computed, needs } from "./cell.ts";
import { cells, type FileReading } from "./cells.ts";
import type { FileTools } from "./file-tools.ts";
import type { Surroundings } from "./surroundings.ts";

/** "records/tops.csv" -> "records/tops.about.json". */
export const descriptionPath = (path: string): string => path.replace(/\.[^./]*$/, "") + ".about.json";

const bytesPlan = (path: string, around: Surroundings): CellPlan => ({
  cell: cells.bytes(path),
  says: path,
  needs: [],
  key: `bytes ${around.generation(path)}`,
  base: 0,
  run: async () => computed(await around.readFile(path)),
});

/** Plans for one file: bytes of table and description, and the reading of both. */
export function sourcePlans(path: string, around: Surroundings): readonly CellPlan[] {
  const about = descriptionPath(path);
  return [
    bytesPlan(path, around),
    bytesPlan(about, around),
    {
      cell: cells.reading(path),
      says: path,
      needs: [needs(cells.bytes(path)), needs(cells.bytes(about))],
      key: "reading",
      base: 0,
      run: async (inputs) => {
        const [bytes, described] = [inputs.get(cells.bytes(path)), inputs.get(cells.bytes(about))];
        return computed(
          await fileReading(around.tools, path, bytes.ok ? bytes.value : null, described.ok ? described.value : null),
        );
      },
    },
  ];
}

/** A file read by its description; a description that is not understood is said, and the file is read without it. */
async function fileReading(
  tools: FileTools["tables"],
  path: string,
  bytes: Uint8Array | null,
  described: Uint8Array | null,
): Promise<FileReading> {
  if (bytes === null || tools === null) return { result: null, description: null, faulty: null };
  const about = described === null ? null : tools.descriptionFromJson(new TextDecoder().decode(described));
  const said = about?.ok ? about.value : null;
  const result = await tools.readRecords(bytes, path, said?.read);
  const description = tools.descriptionWithUsual(result.tables, said);
  if (!about || about.ok) return { result, description, faulty: null };
  const { place = "", reason = "" } = about.refusal.facts as { place?: string; reason?: string };
  return { result, description, faulty: { file: descriptionPath(path), place, reason } };
}
