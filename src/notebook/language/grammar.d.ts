// A grammar file imported: the parser made of it, and the numbers of its terms.
declare module "*.grammar" {
  import type { LRParser } from "@lezer/lr";
  export const parser: LRParser;
}
declare module "*.grammar.terms";
