// The methods of this room, as the one catalogue takes them: calculations on a model that is written as a formula.
import type { Method } from "../base/index.ts";
import { gum } from "./uncertainty/gum.ts";
import { monteCarloUncertainty } from "./uncertainty/monte-carlo-uncertainty.ts";

export const formulaMethods: readonly Method[] = [gum, monteCarloUncertainty];
