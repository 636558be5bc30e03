// `npm run -s cases -- FILE|FOLDER…`: runs reference cases through the catalogue of methods and prints {caseId: {field: value}}.
import { methods } from "../../src/notebook/engine/index.ts";
import { physicsCaseResult, statsCaseResult } from "./case-adapter.ts";
import { type AnyCase, casesIn } from "./load-cases.ts";

const resultOf = (one: AnyCase) =>
  "quantity" in one ? physicsCaseResult(one, methods) : statsCaseResult(one, methods);

const places = process.argv.slice(2);
if (places.length === 0) {
  process.stderr.write("cases FILE|FOLDER…\n");
  process.exitCode = 2;
} else {
  const results: Record<string, unknown> = {};
  for (const one of places.flatMap(casesIn)) {
    const result = resultOf(one);
    if (result) results[one.id] = result;
  }
  // Whoever reads may have read enough.
  process.stdout.on("error", (failure: NodeJS.ErrnoException) => {
    if (failure.code !== "EPIPE") process.exitCode = 1;
  });
  process.stdout.write(`${JSON.stringify(results, null, 1)}\n`);
}
