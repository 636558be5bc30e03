// Where a link of the prose may lead.

const OUTSIDE = /^(?:https?|mailto):/i;
const ANY_SCHEME = /^[^/?#]*:/;

/** The address where a link may lead there, else null: http, https, mailto, or (if asked) inside the workspace. Spaces and control characters refuse it. */
export function safeAddress(address: string, insideLinks: boolean): string | null {
  const bare = Array.from(address)
    .filter((character) => character > " " && character !== "\u007f")
    .join("");
  if (bare !== address.trim()) return null;
  if (OUTSIDE.test(bare)) return bare;
  const inside = bare !== "" && !ANY_SCHEME.test(bare) && !/^[/\\]/.test(bare) && !bare.includes("\\");
  return insideLinks && inside ? bare : null;
}
