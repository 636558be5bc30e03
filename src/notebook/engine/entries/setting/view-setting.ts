import type { Entry } from "../../../language/index.ts";
import { amountResult } from "../../amount-result.ts";
import type { Inputs } from "../../cell.ts";
import { cells } from "../../cells.ts";
import type { EntryPart } from "../../entry-kind.ts";

/** Its positions as a list in prose. */
export function viewSetting(_entry: Entry, key: string, inputs: Inputs): EntryPart | null {
  const setting = inputs.get(cells.setting(key));
  if (!setting.ok) return null;
  const text = [...setting.value].map(([dial, amount]) => `- ${dial}: ${amountResult(amount).words}`).join("\n");
  return { view: { kind: "prose", text } };
}
