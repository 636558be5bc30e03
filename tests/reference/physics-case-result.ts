// A case of wood physics through the methods of its quantity, and the values back in the units that the case asks for.
import { methodRun } from "../../src/cli/method-answer.ts";
import type { Method } from "../../src/core/base/index.ts";
import { fromSi, toSi, unitFromText } from "../../src/core/units/index.ts";
import { acousticsAdapters } from "./adapters/acoustics-adapters.ts";
import { barAdapters } from "./adapters/bar-adapters.ts";
import { densityAdapters } from "./adapters/density-adapters.ts";
import { errorAdapters } from "./adapters/error-adapters.ts";
import type { PhysicsAdapters, PhysicsWay } from "./adapters/physics-adapter.ts";
import { pitchAdapters } from "./adapters/pitch-adapters.ts";
import { plateAdapters } from "./adapters/plate-adapters.ts";
import { recordsAdapters } from "./adapters/records-adapters.ts";
import { thicknessAdapters } from "./adapters/thickness-adapters.ts";
import { writtenAdapters } from "./adapters/written-adapters.ts";
import type { PhysicsCase, PhysicsValue } from "./physics-case.ts";

export const physicsAdapters: PhysicsAdapters = {
  ...writtenAdapters,
  ...densityAdapters,
  ...barAdapters,
  ...plateAdapters,
  ...acousticsAdapters,
  ...thicknessAdapters,
  ...pitchAdapters,
  ...errorAdapters,
  ...recordsAdapters,
};

/** The reference set's own names of units that mean a plain number or a text here. */
const PLAIN = new Set(["1", "text", "note", "column", "csv", "flag", "refuse|caution"]);
const given = ({ value, unit }: PhysicsValue): unknown => (PLAIN.has(unit) ? value : { value, unit });

const inputsOf = (one: PhysicsCase, way: PhysicsWay) => ({
  ...way.fixed,
  ...Object.fromEntries(
    Object.entries(way.inputs)
      .filter(([theirs]) => theirs in one.inputs)
      .map(([theirs, ours]) => [ours, given(one.inputs[theirs] as PhysicsValue)]),
  ),
  ...way.made?.(one),
});

/** A number of a result in the unit that the case expects; other values as they are. */
function shown(value: unknown, dimension: string | undefined, wanted: PhysicsValue): unknown {
  const unit = PLAIN.has(wanted.unit) ? null : unitFromText(wanted.unit);
  if (typeof value !== "number" || !unit || dimension === undefined) return value;
  return { value: fromSi(value, unit), unit: wanted.unit };
}

/** What a case gives under the names of its fields: {value, unit}, {refused: why}, with `caution` beside values; null where no method is its own. */
export function physicsCaseResult(
  one: PhysicsCase,
  methods: readonly Method[],
): Readonly<Record<string, unknown>> | null {
  const fields: Record<string, unknown> = {};
  const cautions: string[] = [];
  let hasRun = false;
  for (const way of physicsAdapters[one.quantity] ?? []) {
    const method = methods.find((each) => each.id === way.method);
    if (!method) continue;
    const made = methodRun(method, inputsOf(one, way));
    hasRun = true;
    if ("refused" in made) return { refused: made.refused.sentence };
    cautions.push(...(made.cautions ?? []).map(({ sentence }) => sentence));
    const result = made.result as Readonly<Record<string, unknown>>;
    const units = way.shownIn?.(one) ?? {};
    for (const [theirs, ours] of Object.entries(way.fields)) {
      const wanted = one.expected[theirs] ?? { value: null, unit: "1" };
      if (result[ours] === undefined) continue;
      const own = PLAIN.has(units[theirs] ?? "1") ? null : unitFromText(units[theirs] ?? "1");
      fields[theirs] = own
        ? shown(toSi(Number(result[ours]), own), own.code, wanted)
        : shown(result[ours], method.fields[ours]?.dimension, wanted);
    }
  }
  if (!hasRun) return null;
  return { ...fields, ...(cautions.length > 0 ? { caution: [...new Set(cautions)].join(" ") } : {}) };
}
