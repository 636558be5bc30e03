// Laws that hold for every method on every case from outside: the order of records, the names of labels and a record without values change no answer.
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { methodRun } from "../../src/cli/method-answer.ts";
import { generatorFromSeed } from "../../src/core/numerics/index.ts";
import { methods } from "../../src/notebook/engine/index.ts";
import { statsCaseInputs } from "./case-adapter.ts";
import { casesIn } from "./load-cases.ts";
import { methodOf, type StatsCase } from "./stats-case.ts";

type Inputs = Readonly<Record<string, unknown>>;
type Fields = Readonly<Record<string, unknown>>;

const cases = (casesIn(fileURLToPath(new URL("stats/cases", import.meta.url))) as readonly StatsCase[]).filter(
  (one) => !one.expected.refused,
);

/** Readings in time, tables of functions, budgets: there the place of a value says what it is. */
const ORDERED =
  /^(cusum|ewma|individuals-chart|descriptive-nist|distribution|gum|monte-carlo-uncertainty|fisher-exact)$/;
/** Inputs that are lists of something else than records. */
const NOT_RECORDS = /^(predict_at|at_x?\d*|quantiles_at|(x\d_)?levels|group_order|pairs|coefficient_order|order)$/;

const isRecords = (name: string, value: unknown): value is readonly unknown[] =>
  Array.isArray(value) && value.length > 1 && !NOT_RECORDS.test(name) && !value.some(Array.isArray);

const run = (one: StatsCase, inputs: Inputs): Fields => {
  const method = methods.find((each) => each.id === methodOf(one));
  if (!method) throw new Error(`no method ${methodOf(one)}`);
  const made = methodRun(method, inputs);
  return "refused" in made ? { refused: made.refused.code } : (made.result as Fields);
};

/** The same order for lists of one length, so that pairs stay pairs. */
function shuffled(inputs: Inputs, seed: number): Inputs {
  const orders = new Map<number, readonly number[]>();
  const orderOf = (length: number): readonly number[] => {
    const known = orders.get(length);
    if (known) return known;
    const stream = generatorFromSeed(seed).split(String(length));
    const order = Array.from({ length }, (_, at) => ({ at, key: stream.next() }))
      .sort((a, b) => a.key - b.key)
      .map(({ at }) => at);
    orders.set(length, order);
    return order;
  };
  return Object.fromEntries(
    Object.entries(inputs).map(([name, value]) => {
      return [name, isRecords(name, value) ? orderOf(value.length).map((at) => value[at]) : value];
    }),
  );
}

const isNumbers = (value: unknown): value is readonly number[] =>
  Array.isArray(value) && value.every((each) => typeof each === "number");

/** Numbers within the tolerance; lists of them hold the same numbers, in whatever order: some have a figure a record. */
function near(a: unknown, b: unknown, relative: number): boolean {
  if (typeof a === "number" && typeof b === "number")
    return Math.abs(a - b) <= relative * Math.max(Math.abs(a), Math.abs(b)) + 1e-13;
  if (!isNumbers(a) || !isNumbers(b)) return Array.isArray(a) || JSON.stringify(a) === JSON.stringify(b);
  const [one, other] = [a.toSorted((x, y) => x - y), b.toSorted((x, y) => x - y)];
  const scale = relative * Math.max(0, ...one.map(Math.abs));
  return one.length === other.length && one.every((value, at) => Math.abs(value - (other[at] ?? Number.NaN)) <= scale);
}

/** The fields of two results that differ. */
const differing = (before: Fields, after: Fields, relative: number, not = /^$/): string[] =>
  Object.keys(before)
    .filter((name) => !not.test(name) && !near(before[name], after[name], relative))
    .map((name) => `${name}: ${JSON.stringify(before[name])} became ${JSON.stringify(after[name])}`);

const unordered = cases
  .filter((one) => !ORDERED.test(methodOf(one)))
  .map((one) => [methodOf(one), one.id, one] as const);

describe("the order of records changes nothing", () => {
  it.each(unordered)("%s, %s", (_, __, one) => {
    const inputs = statsCaseInputs(one, methods);
    expect(differing(run(one, inputs), run(one, shuffled(inputs, 7)), 1e-7)).toEqual([]);
  });
});

describe("the names of labels change nothing", () => {
  const renamed = (value: unknown): unknown =>
    Array.isArray(value) && value.some((each) => typeof each === "string")
      ? value.map((each: unknown) =>
          typeof each === "string"
            ? each
                .split(" | ")
                .map((name) => `a ${name}`)
                .join(" | ")
            : each,
        )
      : value;
  it.each(unordered)("%s, %s", (_, __, one) => {
    const inputs = statsCaseInputs(one, methods);
    const other = Object.fromEntries(
      Object.entries(inputs).map(([name, value]) => [
        name,
        name === "levels" && isNumbers(inputs.y) ? value : renamed(value),
      ]),
    );
    expect(differing(run(one, inputs), run(one, other), 1e-12)).toEqual([]);
  });
});

describe("a record without values changes only how many are set aside", () => {
  it.each(unordered)("%s, %s", (_, __, one) => {
    const inputs = statsCaseInputs(one, methods);
    const lengths = new Set(
      Object.entries(inputs).flatMap(([name, value]) => (isRecords(name, value) ? [value.length] : [])),
    );
    if (lengths.size !== 1 || "a" in inputs || "p" in inputs || "k" in inputs) return;
    const longer = Object.fromEntries(
      Object.entries(inputs).map(([name, value]) => [name, isRecords(name, value) ? [...value, null] : value]),
    );
    expect(differing(run(one, inputs), run(one, longer), 1e-12, /^set_aside$/)).toEqual([]);
  });
});
