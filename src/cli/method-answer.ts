// One line of the `method` command: {id, method, inputs} -> {id, result, uncertainties, cautions} or {id, refused}.
import { type Caution, type Method, problems, type Refusal, refusals, stated } from "../core/base/index.ts";
import { inputsFromJson } from "./inputs-from-json.ts";
import { programProblems } from "./program-problems.ts";
import { uncertainInputs } from "./uncertain-inputs.ts";

type Refused = { readonly refused: { readonly code: string; readonly sentence: string } };
type Answered = {
  readonly result: unknown;
  readonly uncertainties?: unknown;
  readonly cautions?: readonly (Caution & { readonly sentence: string })[];
};
export type MethodAnswer = { readonly id: unknown } & (Answered | Refused);

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === "object" && value !== null && !Array.isArray(value);

/** Fields as plain JSON: what is not finite is null, typed arrays are lists. */
function plain(value: unknown): unknown {
  if (typeof value === "number") return Number.isFinite(value) ? value : null;
  if (value instanceof Float64Array || value instanceof Int32Array || value instanceof Uint8Array)
    return Array.from(value, plain);
  if (Array.isArray(value)) return value.map(plain);
  if (isRecord(value)) return Object.fromEntries(Object.entries(value).map(([key, each]) => [key, plain(each)]));
  return value ?? null;
}

const refusedWith = ({ code, facts }: Refusal): Refused => ({
  refused: { code, sentence: (refusals[code] as (facts: unknown) => string)(facts) },
});

/**
 * Runs a method on inputs as JSON gives them; a fault of ours is a refusal, never a crash. correlations: between inputs that carry an uncertainty.
 */
export function methodRun(
  method: Method,
  inputs: Readonly<Record<string, unknown>>,
  correlations?: unknown,
): Answered | Refused {
  try {
    const made = inputsFromJson(method.inputs, inputs);
    if (!made.ok) return refusedWith(made.refusal);
    const outcome = method.run(made.value);
    if (!outcome.ok) return refusedWith(outcome.refusal);
    const cautions = method.cautions?.(made.value, outcome.value) ?? [];
    const uncertainties = uncertainInputs(method, inputs, made.value, correlations);
    if (!uncertainties.ok) return refusedWith(uncertainties.refusal);
    return {
      result: plain(outcome.value),
      ...(uncertainties.value ? { uncertainties: plain(uncertainties.value) } : {}),
      ...(cautions.length > 0 ? { cautions: cautions.map(stated) } : {}),
    };
  } catch {
    return { refused: { code: "defect", sentence: problems.defect({ id: method.id }) } };
  }
}

/** The answer to one line; a line that is not understood is refused with its number. */
export function methodAnswer(line: string, at: number, methods: readonly Method[]): MethodAnswer {
  let asked: unknown;
  try {
    asked = JSON.parse(line);
  } catch {
    asked = null;
  }
  if (!isRecord(asked) || typeof asked.method !== "string") {
    return {
      id: isRecord(asked) ? (asked.id ?? null) : null,
      refused: { code: "not-json", sentence: programProblems["not-json"]({ line: at }) },
    };
  }
  const id = asked.id ?? null;
  const method = methods.find((each) => each.id === asked.method);
  if (!method)
    return {
      id,
      refused: {
        code: "unknown-method",
        sentence: programProblems["unknown-method"]({ name: asked.method.slice(0, 60) }),
      },
    };
  return { id, ...methodRun(method, isRecord(asked.inputs) ? asked.inputs : {}, asked.correlations) };
}
