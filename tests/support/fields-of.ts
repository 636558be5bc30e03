import type { Method, MethodInputs } from "../../src/core/base/index.ts";

type Fields = Readonly<Record<string, number>>;

/** The fields of a run that must succeed, as numbers. */
export function fieldsOf(method: Method, inputs: MethodInputs): Fields {
  const outcome = method.run(inputs);
  if (!outcome.ok) throw new Error(`declined: ${JSON.stringify(outcome.refusal)}`);
  return outcome.value as Fields;
}

/** The code of the refusal of a run; null where it succeeds. */
export function refusalOf(method: Method, inputs: MethodInputs): string | null {
  const outcome = method.run(inputs);
  return outcome.ok ? null : outcome.refusal.code;
}
