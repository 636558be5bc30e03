export { descriptionFromJson } from "./description-from-json.ts";
export type * from "./read-options.ts";
export type * from "./read-result.ts";
export { readTable } from "./read-table.ts";
export { readingInWords } from "./reading-in-words.ts";
export * from "./reading-warnings.ts";
export type * from "./table-description.ts";
