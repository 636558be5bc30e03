// An edit of one formula, until every answer that rests on it has come to rest.
import { createNotebookEngine } from "../../src/notebook/engine/index.ts";
import { type BenchLine, timeOf } from "./bench-line.ts";
import { largeNotebook, largeTable } from "./large-notebook.ts";

type Size = { readonly rows: number; readonly columns: number; readonly entries: number; readonly edits: number };

/** An edit against computing the whole notebook anew. `limit`: milliseconds that nineteen edits of twenty shall keep within. */
export async function editSettled(size: Size, limit: number): Promise<BenchLine> {
  const { rows, columns, entries, edits } = size;
  const bytes = new TextEncoder().encode(largeTable(rows, columns));
  const readFile = async (path: string) => (path === "records/large.csv" ? bytes : null);
  const opened = () => createNotebookEngine({ readFile, schedule: setImmediate, asOf: null, version: "bench" });
  const whole: number[] = [];
  for (let round = 0; round < (rows > 10_000 ? 1 : 5); round++)
    whole.push(
      await timeOf(async () => {
        const fresh = opened();
        fresh.update(largeNotebook(columns, entries, 2), "large.md");
        await fresh.settled();
        fresh.result();
        fresh.dispose();
      }),
    );
  const engine = opened();
  engine.update(largeNotebook(columns, entries, 2), "large.md");
  await engine.settled();
  const answered = engine.result().entries.filter((entry) => entry.finding && entry.finding.kind !== "refused").length;
  const times: number[] = [];
  for (let edit = 0; edit < edits; edit++)
    times.push(
      await timeOf(async () => {
        engine.update(largeNotebook(columns, entries, 2 + (edit + 1) / 8), "large.md");
        await engine.settled();
        engine.result();
      }),
    );
  engine.dispose();
  times.sort((a, b) => a - b);
  const late = times[Math.min(times.length - 1, Math.floor(0.95 * times.length))] ?? 0;
  const middle = times[times.length >> 1] ?? 0;
  return {
    name: `edit to settled, ${rows.toLocaleString("en")} rows x ${columns} columns x ${entries} entries`,
    baseline: "the same notebook from scratch",
    ours: middle,
    theirs: Math.min(...whole),
    aim: { words: `19 of 20 within ${limit} ms`, within: late <= limit },
    note: `${times.length} edits of one formula, ${answered} questions answered: middle ${middle.toFixed(1)} ms, 19 of 20 within ${late.toFixed(1)} ms, slowest ${(times.at(-1) ?? 0).toFixed(1)} ms`,
  };
}
