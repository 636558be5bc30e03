import type { MethodFields } from "../base/index.ts";

/** The seed of a method's draws as a finding carries it; nothing where none took part. */
export const seedOf = ({ seed }: MethodFields): { readonly seed?: number } =>
  typeof seed === "number" ? { seed } : {};
