// A reference case to a line of the `method` command, and the answer back to the names of its expected fields: by method, never by case.

import { inputSpec } from "../../src/cli/inputs-from-json.ts";
import { methodRun } from "../../src/cli/method-answer.ts";
import type { Method } from "../../src/core/base/index.ts";
import { comparisonAdapters } from "./adapters/comparison-adapters.ts";
import { countsAdapters } from "./adapters/counts-adapters.ts";
import { modelsAdapters } from "./adapters/models-adapters.ts";
import { regressionAdapters } from "./adapters/regression-adapters.ts";
import { unreadOptions } from "./adapters/said-options.ts";
import { shopAdapters } from "./adapters/shop-adapters.ts";
import { plainInputs, type StatsAdapters } from "./adapters/stats-adapter.ts";
import { uncertaintyAdapters } from "./adapters/uncertainty-adapters.ts";
import { type Inputs, methodOf, type StatsCase } from "./stats-case.ts";

const adapters: StatsAdapters = {
  ...comparisonAdapters,
  ...modelsAdapters,
  ...regressionAdapters,
  ...countsAdapters,
  ...shopAdapters,
  ...uncertaintyAdapters,
};

/**
 * The inputs of a statistical case for its method: its columns and options as far as they are inputs there. A case also says what it is, and carries
 * columns that nobody asks for; the numbered predictors of a model stay, so that one too many is declined and not left out.
 */
export function statsCaseInputs(one: StatsCase, methods: readonly Method[]): Inputs {
  const id = methodOf(one);
  const specs = methods.find((each) => each.id === id)?.inputs ?? {};
  const given = Object.entries((adapters[id]?.inputs ?? plainInputs)(one));
  const isPredictor = (name: string) => /^(x|z|at_x)\d+$/.test(name) && !(name in one.data);
  return Object.fromEntries(
    given.filter(([name, value]) => inputSpec(specs, name) !== undefined || (value !== undefined && isPredictor(name))),
  );
}

/** What a statistical case gives under the names of its fields, {refused, why}, or null where the catalogue has no such method. */
export function statsCaseResult(one: StatsCase, methods: readonly Method[]): Readonly<Record<string, unknown>> | null {
  const id = methodOf(one);
  const method = methods.find((each) => each.id === id);
  if (!method) return null;
  const adapter = adapters[id];
  const inputs = statsCaseInputs(one, methods);
  const unread = unreadOptions(one, id, method.inputs, inputs);
  if (unread.length > 0) return { refused: true, why: `${unread.join(", ")} says what ${id} does not do.` };
  const made = methodRun(method, inputs);
  if ("refused" in made) return { refused: true, why: made.refused.sentence };
  const result = made.result as Readonly<Record<string, unknown>>;
  return adapter?.fields?.(result, one) ?? result;
}

export { physicsCaseResult } from "./physics-case-result.ts";
export const caseAdapter = { statsCaseResult } as const;
