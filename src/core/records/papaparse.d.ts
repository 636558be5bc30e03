// The two calls of papaparse that are used, typed by hand.
declare module "papaparse" {
  const papaparse: {
    parse(
      text: string,
      options: { delimiter: string; newline: string; quoteChar: string; header: false; skipEmptyLines: false },
    ): { data: string[][] };
    unparse(records: readonly (readonly string[])[], options: { delimiter: string; newline: string }): string;
  };
  export default papaparse;
}
