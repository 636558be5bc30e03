// Expected values: tests/reference/stats/cases/*.json, computed in R 4.2.2 or printed; the source and the tolerance of each field are inside.
import { readdirSync, readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { questionMethods } from "../../../src/core/questions/methods/question-methods.ts";

type Field = { value: unknown; rtol?: number; atol?: number; of?: string };
type Case = {
  id: string;
  method: string;
  data: Record<string, unknown>;
  options: Record<string, unknown>;
  expected: Record<string, Field>;
};
const folder = new URL("../../reference/stats/cases/", import.meta.url);
const cases = readdirSync(folder).map((name) => JSON.parse(readFileSync(new URL(name, folder), "utf8")) as Case);

/** The case's own column names, told by its model, become the method's input names. */
function inputsOf({ method, data, options }: Case): Record<string, unknown> {
  const read = Object.fromEntries(
    Object.entries(data).map(([name, list]) => [
      name,
      Array.isArray(list)
        ? list.map((one) => (one === null ? Number.NaN : one === "Infinity" ? Number.POSITIVE_INFINITY : one))
        : list,
    ]),
  );
  const [left, right] = String(options.model ?? "")
    .split("~")
    .map((side) => side.trim());
  const inputs: Record<string, unknown> = { ...read, ...options };
  if (options.response)
    Object.assign(inputs, {
      y: read[String(options.response)],
      x: read[String(options.covariate)],
      group: read[String(options.group)],
    });
  else if (options.model && right) {
    const names = right
      .split("+")
      .map((name) => name.trim())
      .filter((name) => !/^[01]$/.test(name));
    inputs.y = read[left!];
    if (method === "ols-multiple")
      for (const [at, name] of names.entries())
        Object.assign(inputs, {
          [`x${at + 1}`]: read[name],
          [`at_x${at + 1}`]: (options.predict_at as Record<string, unknown> | undefined)?.[name],
        });
    else if (method === "influence")
      for (const [at, name] of names.entries()) Object.assign(inputs, { [`x${at === 0 ? "" : at + 1}`]: read[name] });
    else inputs.x = read[names[0]!];
  }
  if (options.cluster) inputs.cluster = read[String(options.cluster)];
  return inputs;
}

/** Why a field is not what the case says, or null. The rule is the reference set's: |got - value| <= max(rtol |value|, atol). */
function off(want: unknown, got: unknown, field: Field): string | null {
  if (Array.isArray(want)) {
    if (want.every((one) => one === null) && (got === null || got === undefined)) return null;
    if (!Array.isArray(got) || got.length !== want.length)
      return `a list of ${want.length} expected, ${JSON.stringify(got)} found`;
    return want.map((one, at) => off(one, got[at], field)).find((why) => why !== null) ?? null;
  }
  if (want === null) return got === null || got === undefined ? null : `should be withheld, ${got} found`;
  if (typeof want !== "number") return want === got ? null : `${want} expected, ${got} found`;
  if (typeof got !== "number" || Number.isNaN(got)) return `${want} expected, ${got} found`;
  return Math.abs(got - want) <= Math.max((field.rtol ?? 0) * Math.abs(want), field.atol ?? 0)
    ? null
    : `${want} expected, ${got} found`;
}

for (const method of questionMethods) {
  const own = cases.filter(
    (one) => one.method === method.id || (one.method === "degenerate" && one.options.of === method.id),
  );
  it(`${method.id} has cases from outside`, () => expect(own.length).toBeGreaterThan(0));
  it.each(own.map((one) => [one.id, one] as const))(`${method.id} gives what %s says`, (_, one) => {
    const outcome = method.run(inputsOf(one) as never);
    if (one.expected.refused) return expect(outcome.ok).toBe(false);
    if (!outcome.ok && one.options.refusal_also_accepted) return;
    expect(outcome).toMatchObject({ ok: true });
    const fields: Record<string, unknown> = outcome.ok ? { ...outcome.value } : {};
    const slopes = Object.keys(one.expected).filter((name) => /^dfbetas_(?!intercept)/.test(name));
    for (const [at, name] of slopes.entries()) fields[name] = fields[`dfbetas_x${at === 0 ? "" : at + 1}`];
    const wrong = Object.entries(one.expected).map(([name, field]) => {
      const named = name in fields || !field.of ? name : field.of;
      const why = off(field.value, fields[named], field);
      return why === null ? null : `${name}: ${why}`;
    });
    expect(wrong.filter(Boolean)).toEqual([]);
  });
}
