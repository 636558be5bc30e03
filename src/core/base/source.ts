/** Where a formula, a figure or a rule comes from. */
export type Source = {
  /** Author, year, title, page or equation; or "common practice, no source". */
  readonly citation: string;
  /** "standard" is defined exactly; "memory" was recalled and not read again. */
  readonly basis: "standard" | "published" | "derived" | "memory" | "common-practice";
};
