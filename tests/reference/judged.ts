// Whether a result is what its case expects. The rule is the reference set's: |got - value| <= max(rtol |value|, atol), lists item by item,
// null for what must be withheld.
import { centsBetween, fromSi, pitchFromText, toSi, unitFromText } from "../../src/core/units/index.ts";
import type { PhysicsCase, PhysicsValue } from "./physics-case.ts";
import type { Expected, StatsCase } from "./stats-case.ts";

type Result = Readonly<Record<string, unknown>>;

const limit = (value: unknown): unknown =>
  value === "Infinity" ? Number.POSITIVE_INFINITY : value === "-Infinity" ? Number.NEGATIVE_INFINITY : value;

/** Why a value is not the expected one, or null. */
export function off(want: unknown, got: unknown, field: Pick<Expected, "rtol" | "atol">): string | null {
  const isWithheld = got === null || got === undefined;
  if (Array.isArray(want)) {
    if (want.length > 0 && want.every((one) => one === null) && isWithheld) return null;
    if (!Array.isArray(got) || got.length !== want.length)
      return `a list of ${want.length} expected, ${JSON.stringify(got)} found`;
    return want.map((one, at) => off(one, got[at], field)).find((why) => why !== null) ?? null;
  }
  if (want === null) return isWithheld ? null : `should be withheld, ${got} found`;
  const [wanted, found] = [limit(want), limit(got)];
  if (typeof wanted !== "number" || !Number.isFinite(wanted))
    return wanted === found ? null : `${want} expected, ${JSON.stringify(got)} found`;
  if (typeof found !== "number" || !Number.isFinite(found)) return `${want} expected, ${JSON.stringify(got)} found`;
  return Math.abs(found - wanted) <= Math.max((field.rtol ?? 0) * Math.abs(wanted), field.atol ?? 0)
    ? null
    : `${want} expected, ${got} found`;
}

/** What is wrong with the result of a statistical case, a line a field; empty where all is right. */
export function statsFaults({ expected, options }: StatsCase, result: Result): string[] {
  if (result.refused === true)
    return expected.refused || options.refusal_also_accepted ? [] : [`declined: ${String(result.why)}`];
  return Object.entries(expected).flatMap(([name, field]) => {
    const source = name in result ? name : (field.of ?? name);
    const all = result[source];
    const got = field.at !== undefined && source !== name && Array.isArray(all) ? all.at(field.at) : all;
    const why = off(field.value, got, field);
    return why === null ? [] : [`${name}: ${why}`];
  });
}

function physicsFault(want: PhysicsValue, got: unknown): string | null {
  const plain = typeof got === "object" && got !== null ? (got as { value?: unknown }).value : got;
  if (want.unit === "note") {
    const [one, other] = [pitchFromText(String(want.value)), pitchFromText(String(plain))];
    return one && other && Math.abs(centsBetween(one.frequency, other.frequency)) < 1e-6
      ? null
      : `${want.value} expected, ${plain} found`;
  }
  const unit = typeof got === "object" && got !== null ? (got as { unit?: string }).unit : want.unit;
  const [from, to] = [unitFromText(unit ?? want.unit), unitFromText(want.unit)];
  const value = typeof plain === "number" && from && to && unit !== want.unit ? fromSi(toSi(plain, from), to) : plain;
  return off(want.value, value, {
    ...(want.tolerance_relative === undefined ? {} : { rtol: want.tolerance_relative }),
    ...(want.tolerance_absolute === undefined ? {} : { atol: want.tolerance_absolute * (1 + 1e-9) }),
  });
}

/** What is wrong with the result of a physics case: a value off, a number where none may be given, a caution that is not said. */
export function physicsFaults({ expected }: PhysicsCase, result: Result): string[] {
  const outcome = expected.outcome?.value;
  if (outcome === "refuse") return typeof result.refused === "string" ? [] : ["should be declined"];
  if (outcome === "caution")
    return result.caution || result.refused ? [] : ["gives a number without a word of caution"];
  if (result.refused) return [`declined: ${String(result.refused)}`];
  return Object.entries(expected).flatMap(([name, want]) => {
    const why = physicsFault(want, result[name]);
    return why === null ? [] : [`${name}: ${why}`];
  });
}

export const judged = { off, statsFaults, physicsFaults } as const;
