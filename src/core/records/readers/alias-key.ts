/** A spelling as aliases know it: space and case disregarded. */
export const aliasKey = (text: string): string => text.trim().split(/\s+/u).join(" ").toLowerCase();
