/** What the maker answered about a file. Each answer stands in place of the evidence, and its question is not asked again. */
export type ReadOptions = {
  /** Cells carry the guard of an export, which is taken off. */
  readonly guarded?: boolean;
  readonly encoding?: string;
  readonly delimiter?: string;
  readonly decimal?: "," | ".";
  readonly dayFirst?: boolean;
  readonly noteNames?: "english" | "german";
  /** Column name -> spelling as written -> the name to use. */
  readonly aliases?: Readonly<Record<string, Readonly<Record<string, string>>>>;
};
