import { limits, problems } from "../core/base/index.ts";
import { descriptionFromJson, type TableDescription } from "../core/records/index.ts";
import { descriptionPath } from "../notebook/engine/index.ts";
import type { AnyProblem } from "./problem-lines.ts";
import type { Surface } from "./surface.ts";

/** The description beside a file of records, null where there is none; or what is wrong with it. */
export type Described =
  | { readonly ok: true; readonly said: TableDescription | null }
  | { readonly ok: false; readonly problem: AnyProblem };

/** Reads it. One that is too large for a description is not understood, like one that is no JSON. */
export async function describedBeside(file: string, surface: Surface): Promise<Described> {
  const beside = descriptionPath(file);
  const bytes = await surface.read(beside);
  if (bytes === null) return { ok: true, said: null };
  const small = bytes.length <= limits.notebookBytes.value;
  const about = descriptionFromJson(small ? new TextDecoder().decode(bytes) : "");
  if (about.ok) return { ok: true, said: about.value };
  const { place = "", reason = "" } = about.refusal.facts as { place?: string; reason?: string };
  const code = "description-not-understood";
  return { ok: false, problem: { code, sentence: problems[code]({ file: beside, place, reason }), file: beside } };
}
