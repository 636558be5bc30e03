// Builds when dist is missing or older than what it is made from, so that `npm start` needs no other step.
import { execFileSync } from "node:child_process";
import { existsSync, readdirSync, statSync } from "node:fs";
import { join } from "node:path";

const newest = (folder) => readdirSync(folder, { recursive: true, withFileTypes: true })
  .filter((entry) => entry.isFile()).reduce((time, entry) => Math.max(time, statSync(join(entry.parentPath, entry.name)).mtimeMs), 0);
const last = "dist/node/thumbrule.js";
const made = existsSync(last) && existsSync("dist/app/index.html") && existsSync("dist/reader/reader.js") ? statSync(last).mtimeMs : 0;
const sources = Math.max(newest("src"), newest("tests/bench"), newest("data-schema"), ...["package.json", "plugins.config.ts",
  "vite.config.ts", "vite.reader.config.ts", "vite.node.config.ts"].map((file) => statSync(file).mtimeMs));
if (made < sources) {
  process.stderr.write("building …\n");
  execFileSync("npm", ["run", "-s", "build:fast"], { stdio: ["ignore", 2, 2] });
}
