// What tests and the benchmark call of the CSV parser: its splitting, that ours is held against.
declare module "papaparse" {
  const Papa: {
    parse(
      text: string,
      options?: { delimiter: string; newline: string; quoteChar: string; header: false; skipEmptyLines: false },
    ): { readonly data: string[][] };
  };
  export default Papa;
}
