// Where a unit ends that stands after a number or after `in`: the longest stretch of the line that is a known unit.
import { unitFromText } from "../../core/units/index.ts";

/** Letters and marks of one part of a unit, with its power: `m3`, `s²`, `m^3`, `°C`, `%`, `[lb_av]`. */
const PART = /^(?:\[[A-Za-z_0-9]{1,20}\]|[\p{L}°%‰′µ]{1,24})(?:\^?[-−]?\d{1,2}(?![\p{L}\p{N}_])|[⁻⁰¹²³⁴⁵⁶⁷⁸⁹]{1,4})?/u;
const JOIN = /^(?:[/.·⋅]|[ \u00a0\u202f]per[ \u00a0\u202f]|[ \u00a0\u202f])/u;
/** Words of sentences that may follow an amount: a unit never runs on into them. */
const NEVER = new Set(
  "in and or not is as at a for from to step by of than then else give within where stated because rises falls against across beside allowing when expect word if has stays are".split(
    " ",
  ),
);
const WORD = /^[\p{L}_]+/u;

/** Length of what is spelt like a unit from the start of `text`, part by part: every place where it might end. */
function ends(text: string): number[] {
  const found: number[] = [];
  let at = 0;
  for (let parts = 0; parts < 6; parts++) {
    const bracket = parts > 0 ? /^\([^()\n]{1,40}\)\d?/.exec(text.slice(at)) : null;
    const part = bracket?.[0] ?? PART.exec(text.slice(at))?.[0];
    if (part === undefined || (NEVER.has(WORD.exec(text.slice(at))?.[0] ?? "") && (parts > 0 || part !== "in"))) break;
    at += part.length;
    found.push(at);
    const join = JOIN.exec(text.slice(at))?.[0];
    if (join === undefined) break;
    at += join.length;
  }
  return found;
}

/** Length of the known unit at the start of `text`; 0 if there is none. `text`: what follows on the same line. */
export function unitAt(text: string): number {
  for (const end of ends(text).reverse()) {
    const next = text[end] ?? "";
    if (/[\p{L}\p{N}_(]/u.test(next)) continue;
    if (unitFromText(text.slice(0, end)) !== null) return end;
  }
  return 0;
}

/** Length of one word that stands where a unit should; 0 if it is a word of the sentences or no word at all. */
export function unitLikeAt(text: string): number {
  const word = /^[\p{L}°%‰µ[][\p{L}\p{N}°%‰µ^/·.[\]_²³-]{0,40}/u.exec(text)?.[0] ?? "";
  return NEVER.has(WORD.exec(word)?.[0] ?? "") ? 0 : word.replace(/[./·-]+$/u, "").length;
}

/** Whether `in` at the start of `text` is the word for showing in a unit, not the inch: a unit follows, and what follows is not `at least`. */
export function showsInUnit(text: string): boolean {
  const rest = /^in[ \t\u00a0]+/.exec(text)?.[0];
  if (rest === undefined || /^at\s+least\b/.test(text.slice(rest.length))) return false;
  const after = text.slice(rest.length);
  return /^in\b/.test(after) ? !/^in[ \t\u00a0]+[\p{L}°%µ]/u.test(after) : unitAt(after) > 0;
}
