// A checked formula: a straight list of steps over a stack of values, so that a long formula needs no deep call.
//
//   density = mass / (length * width)     column mass | column length | column width | binary * | binary /
//   stack                                 m             m l             m l w          m lw       m/lw
import type { BinaryOperator } from "./expression.ts";
import type { FormulaFunction } from "./formula-function.ts";
import type { GroupFunction } from "./group-function.ts";
import type { ValueType } from "./value-type.ts";

export type Step =
  /** A number in SI; `source` names its error, `uncertainty` is standard, SI. */
  | { readonly does: "constant"; readonly value: number; readonly uncertainty: number; readonly source: string }
  | { readonly does: "text"; readonly value: string }
  | { readonly does: "column" | "value"; readonly name: string }
  | { readonly does: "negate" | "not" | "choose" }
  | { readonly does: "scale"; readonly factor: number }
  /** Base and exponent are on the stack; the exponent is known exactly. */
  | { readonly does: "power"; readonly exponent: number }
  | { readonly does: "binary"; readonly operator: BinaryOperator }
  | { readonly does: "is-missing"; readonly yes: boolean }
  /** `says`: the call as it is written, which names the error that lies in its scatter. */
  | { readonly does: "call"; readonly calls: FormulaFunction; readonly count: number; readonly says: string }
  | {
      readonly does: "group";
      readonly calls: GroupFunction;
      readonly of: TypedExpression;
      readonly by: TypedExpression | null;
      readonly says: string;
    };

export type TypedExpression = {
  readonly type: ValueType;
  /** Canonical code in which it is shown; "1" where it is no quantity. */
  readonly unit: string;
  readonly steps: readonly Step[];
  /** Names that it reads, each once, sorted. */
  readonly columns: readonly string[];
  readonly values: readonly string[];
};
