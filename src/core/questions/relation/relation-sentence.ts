import type { Estimate } from "../../base/index.ts";
import { directionAmong } from "../among-questions.ts";
import { columnInWords } from "../column-in-words.ts";
import { intervalInWords } from "../interval-in-words.ts";
import { moreInWords } from "../more-in-words.ts";
import type { RelationInput } from "./relation-input.ts";
import { slopeClause } from "./slope-clause.ts";

const upper = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
const ratio = (slope: Estimate): number => slope.value / (slope.standardError ?? 1);

/** ", within species" or ", allowing for moisture"; nothing where the question allows for nothing. */
function allowance(input: RelationInput): string {
  if (input.allowingFor.length === 0) return "";
  const names = input.allowingFor.map(columnInWords).join(" and ");
  return input.allowingFor.every((column) => column.kind === "label") ? `, within ${names}` : `, allowing for ${names}`;
}

const known = (input: RelationInput, slope: Estimate, at: number): string => {
  const x = input.x[at];
  return x ? `${slopeClause(slope, input.y, x, input.powerLaw)} (95 % interval ${intervalInWords(slope)})` : "";
};

const unknown = (input: RelationInput, slope: Estimate, at: number): string =>
  `whether the ${columnInWords(input.y)} rises or falls with ${columnInWords(input.x[at] ?? input.y)} (95 % interval of the ${input.powerLaw ? "exponent" : "slope"} ${intervalInWords(slope)})`;

/** What the sentence of a relation rests on besides its slopes. `misleading`: a label that flips or explains the slope, with the slope within its groups. */
export type RelationFacts = {
  readonly records: number;
  readonly parameters: number;
  readonly misleading: { readonly group: string; readonly slope: Estimate; readonly contradicts: boolean } | null;
};

/** The sentence of a relation: each slope with its interval, within before across; "can't tell yet" with how many more instruments it would take. */
export function relationSentence(
  input: RelationInput,
  slopes: readonly Estimate[],
  { records, parameters, misleading }: RelationFacts,
): string {
  const tail = `${allowance(input)}, ${records} records`;
  // A slope that misleads is told as it looks; one that is claimed must stand as one of all questions.
  const isOpen = (slope: Estimate) => directionAmong(slope, misleading ? 1 : input.asked) === 0;
  const sure = slopes.flatMap((slope, at) => (isOpen(slope) ? [] : [known(input, slope, at)]));
  const open = slopes.flatMap((slope, at) => (isOpen(slope) ? [{ slope, at }] : []));
  const more = open.map(({ slope }) => moreInWords(ratio(slope), records, parameters, input.asked))[0];
  if (misleading) {
    const across =
      sure[0] !== undefined
        ? `the ${sure[0]}`
        : `it cannot be told ${open.map(({ slope, at }) => unknown(input, slope, at)).join("; ")}`;
    if (misleading.contradicts)
      return `Within each ${misleading.group}, the ${known(input, misleading.slope, 0)}. Across all ${records} records ${across}: that comes from the differences between one ${misleading.group} and another.`;
    return `Across all ${records} records ${across}, but most of that comes from the differences between one ${misleading.group} and another: within each, can't tell yet (95 % interval ${intervalInWords(misleading.slope)}). ${moreInWords(ratio(misleading.slope), records, parameters + 1, input.asked)}.`;
  }
  if (sure.length === 0)
    return `Can't tell yet ${open.map(({ slope, at }) => unknown(input, slope, at)).join(", nor ")}${tail}. ${more}.`;
  const rest =
    open.length === 0
      ? ""
      : ` Can't tell yet ${open.map(({ slope, at }) => unknown(input, slope, at)).join(", nor ")}.`;
  return `The ${sure.join("; the ")}${tail}.${rest}`;
}

/** The sentence of `within G`: each group by itself. */
export function groupSentence(
  input: RelationInput,
  groups: readonly { readonly group: string; readonly slope: Estimate }[],
  records: number,
): string {
  const parts = groups.map(({ group, slope }) =>
    directionAmong(slope, input.asked) === 0
      ? `within ${group}, can't tell yet (95 % interval ${intervalInWords(slope)})`
      : `within ${group}, the ${known(input, slope, 0)}`,
  );
  return `${upper(parts.join("; "))}; ${records} records.`;
}
