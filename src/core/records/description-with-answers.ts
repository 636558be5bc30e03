// What the maker answered on bringing a table in, kept in the description beside it, so that next month's file asks nothing.
import type { Outcome } from "../base/index.ts";
import { succeeded } from "../base/index.ts";
import { descriptionFromJson } from "./description-from-json.ts";
import { jsonWithMember } from "./json-with-member.ts";
import type { ReadOptions } from "./read-options.ts";

/** `read`: every answer that holds, none besides. `fields`: names of the columns, by which a later file of the same shape is known. */
export type DescriptionAnswers = {
  readonly read: ReadOptions;
  readonly fields: readonly string[];
  /** Other members of the description, each set whole. */
  readonly more?: Readonly<Record<string, unknown>>;
};

/**
 * The text of a description with the answers in it. text: what stands in the file, null if there is none; its order, spacing and
 * whatever else it says stay to the byte. A text that is not understood is refused, and never written over.
 */
export function descriptionWithAnswers(text: string | null, answers: DescriptionAnswers): Outcome<string> {
  const before = text ?? "{}\n";
  const known = descriptionFromJson(before);
  if (!known.ok) return known;
  const said: [string, unknown][] = [];
  if (known.value.read !== undefined || Object.keys(answers.read).length > 0) said.push(["read", answers.read]);
  if (text === null && answers.fields.length > 0) said.push(["fields", answers.fields.map((name) => ({ name }))]);
  said.push(...Object.entries(answers.more ?? {}));
  const after = said.length > 0 && text === null ? fresh(said) : edited(before, said);
  const checked = descriptionFromJson(after);
  return checked.ok ? succeeded(after) : checked;
}

const fresh = (said: readonly [string, unknown][]) => `${JSON.stringify(Object.fromEntries(said), null, 2)}\n`;
const edited = (text: string, said: readonly [string, unknown][]) =>
  said.reduce((now, [key, value]) => jsonWithMember(now, key, value), text);
