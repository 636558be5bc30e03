declare module "*.schema.json?validator" {
  const validate: ((value: unknown) => boolean) & {
    readonly errors?: readonly { readonly instancePath: string; readonly message?: string }[] | null;
  };
  export default validate;
}
