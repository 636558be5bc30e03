import type { ColumnSource } from "./column-source.ts";

/** The plain words of a column, once each: its texts that are no cells. */
export function plainWordsOf({ scan, cellAt }: ColumnSource): string[] {
  const { text, size, starts, ends } = scan.texts;
  const words: string[] = [];
  for (let place = 0; place < size; place++)
    if ((cellAt[place] ?? 0) < 0) words.push(text.slice(starts[place], ends[place]));
  return words;
}
