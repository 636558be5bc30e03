// The methods that compare two groups by a figure of their own when a question names them, and where that figure and its interval stand.
import type { Method } from "../../base/index.ts";
import { bootstrap } from "../methods/bootstrap.ts";
import { cliffDelta } from "../methods/cliff-delta.ts";
import { hedgesG } from "../methods/hedges-g.ts";
import { mannWhitney } from "../methods/mann-whitney.ts";

export type ComparisonMethod = {
  readonly method: Method;
  /** What it estimates, of two groups in words. */
  readonly of: (more: string, less: string) => string;
  /** Whether the figure is in the unit of the quantity, or a plain number. */
  readonly isAmount: boolean;
  /** Whether grades will do: their order alone counts. */
  readonly takesGrades: boolean;
  readonly fields: readonly [value: string, low: string, high: string];
};

const list: readonly ComparisonMethod[] = [
  {
    method: mannWhitney,
    of: (more, less) => `typical difference, ${more} less ${less}`,
    isAmount: true,
    takesGrades: false,
    fields: ["hodges_lehmann", "ci95_low", "ci95_high"],
  },
  {
    method: bootstrap,
    of: (more, less) => `difference of means, ${more} less ${less}`,
    isAmount: true,
    takesGrades: false,
    fields: ["estimate", "ci_low", "ci_high"],
  },
  {
    method: hedgesG,
    of: (more, less) => `difference in standard deviations, ${more} less ${less}`,
    isAmount: false,
    takesGrades: false,
    fields: ["g", "g_low", "g_high"],
  },
  {
    method: cliffDelta,
    of: (more, less) => `share of pairs with ${more} above ${less}, less the share below`,
    isAmount: false,
    takesGrades: true,
    fields: ["delta", "ci95_low", "ci95_high"],
  },
];

/** By the id that a question may name. */
export const comparisonMethods: ReadonlyMap<string, ComparisonMethod> = new Map(
  list.map((one) => [one.method.id, one]),
);
