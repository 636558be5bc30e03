// `npm run bench`: each line is a ratio to a named baseline of the same run, so that machines do not matter.
import { benchTable } from "./bench-table.ts";
import { commandReport } from "./command-report.ts";
import { editSettled } from "./edit-settled.ts";
import { methodsBesideR } from "./methods-beside-r.ts";
import { notebookWhole } from "./notebook-whole.ts";
import { costHere, ONE_READING, type ReaderName } from "./one-reading.ts";
import { pageReady } from "./page-ready.ts";
import { plateInverse } from "./plate-inverse.ts";
import { relationFit } from "./relation-fit.ts";
import { tableRead } from "./table-read.ts";
import { timingsInWords } from "./timings-in-r.ts";

if (process.argv[2] === ONE_READING) {
  process.stdout.write(JSON.stringify(await costHere(process.argv[3] ?? "", process.argv[4] as ReaderName)));
  process.exit();
}

const lines = [
  await notebookWhole(),
  await editSettled({ rows: 500, columns: 40, entries: 60, edits: 60 }, 16.7),
  await editSettled({ rows: 100_000, columns: 8, entries: 8, edits: 8 }, 100),
  await relationFit(),
  ...(await plateInverse()),
  ...tableRead(),
  await commandReport(),
  ...(await methodsBesideR()),
];
try {
  lines.push(...(await pageReady()));
} catch (failure) {
  process.stderr.write(`page ready: not measured (${failure instanceof Error ? failure.message : String(failure)})\n`);
}
process.stdout.write(`${benchTable(lines)}\n${timingsInWords()}`);
