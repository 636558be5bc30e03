// `npm run bench`: each line is a ratio to a named baseline of the same run, so that machines do not matter.
import { notebookWhole } from "./notebook-whole.ts";

const lines = [notebookWhole];

for (const line of lines) {
  const { name, baseline, ratio, ours, theirs, aim } = await line();
  process.stdout.write(
    `${name}: ${ratio.toFixed(2)} x ${baseline} (${ours.toFixed(2)} ms against ${theirs.toFixed(2)} ms; ${aim})\n`,
  );
}
