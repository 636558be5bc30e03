// Problems as lines for people: file:line:column code sentence.

export type AnyProblem = {
  readonly file?: string;
  readonly line?: number;
  readonly column?: number;
  readonly code: string;
  readonly sentence: string;
  readonly suggestion?: string;
};

/** One line a problem; the suggestion after it. */
export function problemLines(problems: readonly AnyProblem[]): string {
  return problems
    .map(({ file, line, column, code, sentence, suggestion }) => {
      const place = [file, line, column].filter((part) => part !== undefined).join(":");
      return `${place === "" ? "" : `${place} `}${code} ${sentence}${suggestion === undefined ? "" : ` Did you mean ${suggestion}?`}`;
    })
    .join("\n");
}
