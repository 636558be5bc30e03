import { unitForDisplay } from "../../units/index.ts";
import { importUnit } from "../readers/import-unit.ts";

/** "Thickness (mm)": spelt for people where the importer knows that spelling, else by its code. unit: a UCUM code, null for none. */
export function headerWithUnit(name: string, unit: string | null): string {
  if (unit === null || unit === "1") return name;
  const shown = unitForDisplay(unit);
  return `${name} (${importUnit(shown) === unit ? shown : unit})`;
}
