// One line of the `method` command: {id, method, inputs} -> {id, result} or {id, refused}.
import { type Method, type MethodInputs, problems, refusals } from "../core/base/index.ts";
import { programProblems } from "./program-problems.ts";

export type MethodAnswer =
  | { readonly id: unknown; readonly result: unknown }
  | { readonly id: unknown; readonly refused: { readonly code: string; readonly sentence: string } };

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === "object" && value !== null && !Array.isArray(value);

/** A missing number within an array of numbers is NaN for a method; texts keep null. */
function inputOf(value: unknown): unknown {
  if (!Array.isArray(value)) return value;
  return value.some((each) => typeof each === "string")
    ? value
    : value.map((each: unknown) => (each === null ? Number.NaN : each));
}

/** Fields as plain JSON: what is not finite is null, typed arrays are lists. */
function plain(value: unknown): unknown {
  if (typeof value === "number") return Number.isFinite(value) ? value : null;
  if (value instanceof Float64Array || value instanceof Int32Array || value instanceof Uint8Array)
    return Array.from(value, plain);
  if (Array.isArray(value)) return value.map(plain);
  if (isRecord(value)) return Object.fromEntries(Object.entries(value).map(([key, each]) => [key, plain(each)]));
  return value ?? null;
}

/** Runs a method on inputs; a fault of ours is a refusal, never a crash. */
export function methodRun(
  method: Method,
  inputs: Readonly<Record<string, unknown>>,
): { readonly result: unknown } | { readonly refused: { readonly code: string; readonly sentence: string } } {
  try {
    const made: MethodInputs = Object.assign(
      Object.create(null),
      Object.fromEntries(Object.entries(inputs).map(([key, value]) => [key, inputOf(value)])),
    );
    const outcome = method.run(made);
    if (outcome.ok) return { result: plain(outcome.value) };
    const { code, facts } = outcome.refusal;
    return { refused: { code, sentence: (refusals[code] as (facts: unknown) => string)(facts) } };
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
  if (!isRecord(asked) || typeof asked["method"] !== "string") {
    return {
      id: isRecord(asked) ? (asked["id"] ?? null) : null,
      refused: { code: "not-json", sentence: programProblems["not-json"]({ line: at }) },
    };
  }
  const id = asked["id"] ?? null;
  const method = methods.find((each) => each.id === asked["method"]);
  if (!method)
    return { id, refused: { code: "unknown-method", sentence: problems["unknown-method"]({ name: asked["method"] }) } };
  return { id, ...methodRun(method, isRecord(asked["inputs"]) ? asked["inputs"] : {}) };
}
