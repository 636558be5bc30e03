import type { Caution, Check, Estimate } from "../../base/index.ts";
import { columnInWords } from "../column-in-words.ts";
import { type GroupsBehindSlope, groupsBehindSlopes } from "./groups-behind-slope.ts";
import type { RelationDesign } from "./relation-design.ts";
import type { RelationInput } from "./relation-input.ts";
import { slopeEstimate } from "./slope-estimate.ts";

export type GroupsFound = {
  readonly checks: readonly Check[];
  readonly cautions: readonly Caution[];
  /** The other slope of each label worth telling: across all records where the design has its groups, within them where it has not. */
  readonly estimates: readonly Estimate[];
  /** The label whose groups make the slope across all records mislead most, and the slope within them where the design has not its own groups; null where none does. */
  readonly misleading: {
    readonly group: string;
    readonly contradicts: boolean;
    readonly slope: Estimate | undefined;
  } | null;
};

const moves = (slope: number): string => (slope > 0 ? "rises" : "falls");

function cautionsOf(one: GroupsBehindSlope, differ: boolean, within: boolean): readonly Caution[] {
  const group = columnInWords(one.column);
  const [across, inside] = [one.pooled.coefficients[1] as number, one.common.coefficients[one.at] as number];
  const facts = { group, across: moves(across), within: moves(inside) };
  return [
    ...(one.contradicts ? [{ code: "across-contradicts-within", facts } as const] : []),
    ...(one.explains && !one.contradicts ? [{ code: "groups-explain-slope", facts: { group } } as const] : []),
    ...(differ && !within ? [{ code: "slopes-differ-by-group", facts: { group } } as const] : []),
  ];
}

/** What the groups of each label do to the slope: within before across, and whether their own slopes differ. */
export function groupsFound(input: RelationInput, design: RelationDesign): GroupsFound {
  const groups = groupsBehindSlopes(input, design);
  const limit = 0.05 / groups.length;
  const differs = (one: GroupsBehindSlope) => one.sameSlopes < limit;
  const shown = design.shown[0];
  const told = groups.flatMap((one) => {
    if (!shown || !(one.contradicts || one.explains || design.groups)) return [];
    const [fit, at, name] = design.groups
      ? ([one.pooled, 1, `slope across all records of ${columnInWords(input.y)}`] as const)
      : ([one.common, one.at, `slope within ${columnInWords(one.column)}`] as const);
    const [value, high] = [fit.coefficients[at] as number, fit.high[at] as number];
    const named = input.powerLaw ? name.replace("slope", "exponent") : name;
    const error = fit.standardErrors[at] as number;
    return [{ one, slope: slopeEstimate(named, value, high - value, error, fit.degreesOfFreedom, shown) }];
  });
  const worst = groups.find((one) => one.contradicts) ?? groups.find((one) => one.explains);
  return {
    checks: groups.map((one) => {
      const group = columnInWords(one.column);
      const [across, inside] = [one.pooled.coefficients[1] as number, one.common.coefficients[one.at] as number];
      return {
        id: `within-${one.column.name}`,
        name: `slope within ${group}`,
        value: one.sameSlopes,
        limit,
        passed: !one.contradicts && !one.explains && !differs(one),
        sentence: `Across all records the slope ${moves(across)}, within each ${group} it ${moves(inside)}; the groups' own slopes ${differs(one) ? "differ" : "do not differ more than chance would make them"}.`,
      };
    }),
    cautions: groups.flatMap((one) => cautionsOf(one, differs(one), input.within != null)),
    estimates: told.map(({ slope }) => slope),
    misleading: worst
      ? {
          group: columnInWords(worst.column),
          contradicts: worst.contradicts,
          slope: design.groups ? undefined : told.find(({ one }) => one === worst)?.slope,
        }
      : null,
  };
}
