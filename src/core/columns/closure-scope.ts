// Names of the little language behind closureFunction, resolved to places in flat frames before anything runs.

/** A frame: place 0 holds the frame outside, then parameters and declared names. */
export type Frame = unknown[];
/** One piece of code, turned into a closure over frames. */
export type Run = (frame: Frame) => unknown;
/** What assigns to a place. */
export type Assign = (frame: Frame, value: unknown) => void;
export type ClosureScope = { readonly outer: ClosureScope | null; readonly names: Map<string, number> };

const BANNED = new Set(["constructor", "prototype", "__proto__"]);

/** A member's name that may be used; those that lead to code made from text are refused. */
export function memberName(name: string): string {
  if (BANNED.has(name)) throw new TypeError(`member not allowed: ${name}`);
  return name;
}

/** A computed member: a number, a symbol, or a name that may be used. */
export const memberKey = (key: unknown): PropertyKey =>
  typeof key === "number" || typeof key === "symbol" ? key : memberName(String(key));

/** How many frames up and at which place a name stands, or null. */
export function placeOf(scope: ClosureScope | null, name: string): readonly [up: number, place: number] | null {
  let up = 0;
  for (let at = scope; at; at = at.outer, up++) {
    const place = at.names.get(name);
    if (place !== undefined) return [up, place];
  }
  return null;
}

/** The place of a name in this scope, a new one if it has none. */
export function placeIn(scope: ClosureScope, name: string): number {
  const known = scope.names.get(name);
  if (known !== undefined) return known;
  const place = scope.names.size + 1;
  scope.names.set(name, place);
  return place;
}

/** The frame that many levels up. */
export function frameUp(frame: Frame, up: number): Frame {
  let at = frame;
  for (let level = up; level > 0; level--) at = at[0] as Frame;
  return at;
}
