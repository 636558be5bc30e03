/** The name of an entry, a table or a method: plain with hyphens, else in backquotes. */
export const printEntryName = (name: string): string =>
  /^[\p{L}_][\p{L}\p{N}_-]*$/u.test(name) ? name : `\`${name}\``;
