import type { Column } from "../../core/columns/index.ts";

/** A column's kind as a refusal names it. */
export const kindInWords: { readonly [K in Column["kind"]]: string } = {
  quantity: "a quantity",
  label: "a label",
  grade: "a grade",
  date: "a date",
  pitch: "a pitch",
  words: "words",
  "yes-no": "a yes or no",
};
