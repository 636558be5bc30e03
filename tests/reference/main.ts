// `npm run -s cases -- FILE|FOLDER…`: runs reference cases through the catalogue of methods and prints {caseId: {field: value}}.
import { readdirSync, readFileSync, statSync } from "node:fs";
import { join } from "node:path";
import { methodRun } from "../../src/cli/method-answer.ts";
import { methods } from "../../src/notebook/engine/index.ts";
import { caseInputs, methodOf, type StatsCase } from "./case-adapter.ts";

const files = (path: string): readonly string[] =>
  statSync(path).isDirectory()
    ? readdirSync(path)
        .filter((name) => name.endsWith(".json"))
        .sort()
        .map((name) => join(path, name))
    : [path];

function casesIn(path: string): readonly StatsCase[] {
  const parsed = JSON.parse(readFileSync(path, "utf8")) as StatsCase | readonly StatsCase[];
  return Array.isArray(parsed) ? (parsed as readonly StatsCase[]) : [parsed as StatsCase];
}

const places = process.argv.slice(2);
if (places.length === 0) {
  process.stderr.write("cases FILE|FOLDER…\n");
  process.exitCode = 2;
} else {
  const results: Record<string, unknown> = {};
  for (const one of places.flatMap(files).flatMap(casesIn)) {
    const method = methods.find((each) => each.id === methodOf(one));
    if (!method) continue;
    const made = methodRun(method, caseInputs(one));
    results[one.id] = "result" in made ? made.result : { refused: true, why: made.refused.sentence };
  }
  process.stdout.write(`${JSON.stringify(results, null, 1)}\n`);
}
