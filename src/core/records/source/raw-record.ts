/** One record as it was split, nothing interpreted. `record` counts from 1 in the file; `codes`: trouble with quotes, by place. */
export type RawRecord = {
  readonly record: number;
  readonly fields: readonly string[];
  readonly codes?: ReadonlyMap<number, "stray-quote" | "unclosed-quote">;
};
