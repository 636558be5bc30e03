import type { RecordsCell } from "../../core/records/index.ts";
import { unitForDisplay } from "../../core/units/index.ts";

/** Whether the raw text can be seen in the reading as it is: the same, or the same with the column's unit after it. */
export const isInReading = ({ raw, reading }: RecordsCell, unit: string | null): boolean =>
  raw === "" || reading === raw || (unit !== null && reading === `${raw} ${unitForDisplay(unit)}`);
