// The one catalogue of methods: each room brings its list, this joins them.
import type { Method } from "../../core/base/index.ts";
import { formulaMethods } from "../../core/formula/index.ts";
import { errorMethods, namedMethods, questionMethods } from "../../core/questions/index.ts";
import { recordMethods } from "../../core/records/index.ts";
import { rigMethods } from "../../core/rig/index.ts";
import { unitMethods } from "../../core/units/index.ts";
import { verdictMethods } from "../../core/verdicts/index.ts";
import { woodMethods } from "../../core/wood/index.ts";
import type { QuestionSyntax } from "../language/index.ts";

/** All methods in the order in which they are shown: questions, verdicts, rig checks, units and written measurements, quantities of wood. */
export const methods: readonly Method[] = [
  ...questionMethods,
  ...errorMethods,
  ...verdictMethods,
  ...rigMethods,
  ...unitMethods,
  ...recordMethods,
  ...woodMethods,
  ...formulaMethods,
];

/** Names that may stand after `by` in a question of this sort. */
export const questionMethodNames = (asks: QuestionSyntax["asks"]): readonly string[] => namedMethods[asks];
