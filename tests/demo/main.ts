// Writes the records of the demo workspace again: npm run demo. The same bytes every time.
import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { recordFiles } from "./record-files.ts";

const folder = join(process.cwd(), "notebooks/records");
mkdirSync(folder, { recursive: true });
for (const [name, text] of recordFiles()) {
  writeFileSync(join(folder, name), text);
  process.stdout.write(`notebooks/records/${name}\n`);
}
