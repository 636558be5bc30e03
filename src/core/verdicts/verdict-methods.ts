import type { Method } from "../base/index.ts";
import { equivalence } from "./methods/equivalence.ts";

/** The methods by which rules are judged, in the order shown. */
export const verdictMethods: readonly Method[] = [equivalence];
