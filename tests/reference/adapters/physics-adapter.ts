// How the cases of one quantity of wood physics become lines of methods. By quantity, never by case.
import type { PhysicsCase, PhysicsValue } from "../physics-case.ts";

/** One method that gives some of a quantity's fields: its inputs by the case's names, its fields by the case's. */
export type PhysicsWay = {
  readonly method: string;
  /** Name in the case -> name of the method's input. An input that the case leaves out is left out. */
  readonly inputs: Readonly<Record<string, string>>;
  /** Name in the case's `expected` -> field of the method's result. */
  readonly fields: Readonly<Record<string, string>>;
  /** Further inputs that do not depend on the case's numbers, such as the number of a mode. */
  readonly fixed?: Readonly<Record<string, unknown>>;
  /** Further inputs that are made of several of the case's: lists, files. */
  readonly made?: (one: PhysicsCase) => Readonly<Record<string, unknown>>;
  /** Units of fields that are in those of the inputs, by the case's names. */
  readonly shownIn?: (one: PhysicsCase) => Readonly<Record<string, string>>;
};
export type PhysicsAdapters = Readonly<Record<string, readonly PhysicsWay[]>>;

/** The inputs named NAME1, NAME2, … in order, each with its own unit: "h1", "h2" -> [{value, unit}, {value, unit}]. */
export const listedInputs = ({ inputs }: PhysicsCase, name: string): readonly PhysicsValue[] =>
  Object.keys(inputs)
    .filter((key) => key.startsWith(name) && /^\d+$/.test(key.slice(name.length)))
    .sort((a, b) => Number(a.slice(name.length)) - Number(b.slice(name.length)))
    .flatMap((key) => inputs[key] ?? []);
