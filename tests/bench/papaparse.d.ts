// The one function of the CSV parser that the baseline of the benchmark calls.
declare module "papaparse" {
  const Papa: { parse(text: string): { readonly data: readonly (readonly string[])[] } };
  export default Papa;
}
