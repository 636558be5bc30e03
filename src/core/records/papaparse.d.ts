// The one call of papaparse that is used, typed by hand.
declare module "papaparse" {
  const papaparse: {
    unparse(records: readonly (readonly string[])[], options: { delimiter: string; newline: string }): string;
  };
  export default papaparse;
}
