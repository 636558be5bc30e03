import type { Method } from "../../base/index.ts";
import { declined, succeeded } from "../../base/index.ts";

/** Adjusted values, smallest p first: raw(p, place from 1) made to fall or rise with p by a running limit. */
type Adjustment = {
  readonly raw: (p: number, place: number, count: number, harmonic: number) => number;
  readonly from: "smallest" | "largest";
};

const harmonicSum = (count: number): number => {
  let sum = 0;
  for (let i = count; i >= 1; i--) sum += 1 / i;
  return sum;
};

const adjustments: Readonly<Record<string, Adjustment>> = {
  holm: { from: "smallest", raw: (p, place, count) => p * (count - place + 1) },
  hochberg: { from: "largest", raw: (p, place, count) => p * (count - place + 1) },
  benjamini_hochberg: { from: "largest", raw: (p, place, count) => (p * count) / place },
  benjamini_yekutieli: { from: "largest", raw: (p, place, count, harmonic) => (p * count * harmonic) / place },
  bonferroni: { from: "smallest", raw: (p, _, count) => p * count },
};

/** p values in the order given; a missing one stays missing and does not count. */
function adjusted(p: readonly number[], { raw, from }: Adjustment, asked: number, harmonic: number): (number | null)[] {
  const order = p.flatMap((value, at) => (Number.isNaN(value) ? [] : [at])).sort((a, b) => (p[a] ?? 0) - (p[b] ?? 0));
  const result: (number | null)[] = p.map(() => null);
  const walk = order.map((at, place) => ({ at, value: raw(p[at] ?? 0, place + 1, asked, harmonic) }));
  let limit = from === "smallest" ? 0 : 1;
  for (const { at, value } of from === "smallest" ? walk : walk.toReversed()) {
    limit = from === "smallest" ? Math.min(1, Math.max(limit, value)) : Math.min(limit, value);
    result[at] = limit;
  }
  return result;
}

/** Several p values of one family, so that one in twenty does not pass by luck. */
export const pAdjust: Method = {
  id: "p-adjust",
  name: "p values adjusted for how many were looked at",
  answers: "verdict",
  needs: { rows: 1 },
  inputs: {
    p: {
      kind: "quantities",
      dimension: "1",
      atLeast: 0,
      atMost: 1,
      meaning: "p values of one family; missing ones stay missing",
    },
    n: {
      kind: "number",
      optional: true,
      whole: true,
      atLeast: 1,
      atMost: 1_000_000,
      meaning: "how many were looked at, where not all are given; as many as there are p values unless given",
    },
  },
  fields: {
    n: { meaning: "how many are allowed for" },
    holm: { meaning: "Holm: chance of any false finding, always valid" },
    hochberg: { meaning: "Hochberg: the same for independent tests" },
    bonferroni: { meaning: "Bonferroni" },
    benjamini_hochberg: { meaning: "Benjamini and Hochberg: share of false findings" },
    benjamini_yekutieli: { meaning: "Benjamini and Yekutieli: the same under any dependence" },
  },
  source: {
    citation:
      "Holm (1979), Scand. J. Stat. 6, 65-70; Hochberg (1988), Biometrika 75, 800-802; Benjamini and Hochberg (1995), JRSS B 57, 289-300",
    basis: "published",
  },
  run: ({ p, n }) => {
    const list: readonly unknown[] =
      typeof p === "number" ? [p] : p instanceof Float64Array || Array.isArray(p) ? [...p] : [];
    const isP = (value: unknown): value is number =>
      typeof value === "number" && (Number.isNaN(value) || (value >= 0 && value <= 1));
    if (!list.every(isP)) return declined("out-of-domain", { name: "p", needed: "numbers from 0 to 1" });
    if (list.every(Number.isNaN)) return declined("too-few-records", { have: 0, need: 1 });
    const given = list.filter((value) => !Number.isNaN(value)).length;
    const asked = typeof n === "number" ? n : given;
    if (asked < given)
      return declined("out-of-domain", { name: "n", needed: "at least as many as there are p values" });
    const harmonic = harmonicSum(asked);
    return succeeded({
      n: asked,
      ...Object.fromEntries(
        Object.entries(adjustments).map(([name, each]) => [name, adjusted(list, each, asked, harmonic)]),
      ),
    });
  },
};
