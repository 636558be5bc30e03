import { Defect } from "../base/index.ts";
import type { Unit } from "./unit.ts";
import { unitFromParts } from "./unit.ts";
import { unitRecordOfCode } from "./unit-catalogue.ts";
import { unitParts } from "./unit-parts.ts";

const known = new Map<string, Unit>();
const KEPT = 500;

/** The unit of a canonical code ("kg/m3", "[lb_av]/[ft_i]3", "1"). A code that is not one is our bug: throws a Defect. */
export function unitFromCode(code: string): Unit {
  const before = known.get(code);
  if (before) return before;
  const parts = unitParts(code, unitRecordOfCode);
  if (!parts) throw new Defect(`no unit has the code ${code}`);
  const unit = unitFromParts(parts);
  if (known.size < KEPT) known.set(code, unit);
  return unit;
}

/** How many coherent SI units one of this code is, for differences, uncertainties and slopes: no offset. */
export const scaleFactor = (code: string): number => unitFromCode(code).factor;
