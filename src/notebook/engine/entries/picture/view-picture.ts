import type { Entry } from "../../../language/index.ts";
import type { Inputs } from "../../cell.ts";
import { cells } from "../../cells.ts";
import type { EntryPart } from "../../entry-kind.ts";

/** The picture itself. */
export function viewPicture(_entry: Entry, key: string, inputs: Inputs): EntryPart | null {
  const picture = inputs.get(cells.picture(key));
  return picture.ok ? { view: { kind: "picture", picture: picture.value } } : null;
}
