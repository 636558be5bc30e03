// The one call of papaparse that is used, typed by hand.
declare module "papaparse" {
  const papaparse: {
    parse(
      text: string,
      options: { delimiter: string; newline: string; quoteChar: string; header: false; skipEmptyLines: false },
    ): { data: string[][] };
  };
  export default papaparse;
}
