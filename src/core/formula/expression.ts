// The syntax of a formula, as the language hands it over: plain data, every node with its place in the entry's text.

/** Offsets (UTF-16 units) within the entry's body. */
export type Span = { readonly from: number; readonly to: number };

export type BinaryOperator = "+" | "-" | "*" | "/" | "^" | "=" | "!=" | "<" | "<=" | ">" | ">=" | "and" | "or";

export type Expression = Span &
  (
    | {
        readonly kind: "number";
        readonly value: number;
        readonly unit: string | null;
        readonly unitSpan?: Span;
        readonly uncertainty?: number;
      }
    | { readonly kind: "text"; readonly value: string }
    | { readonly kind: "date"; readonly value: string }
    | { readonly kind: "name"; readonly name: string }
    | {
        readonly kind: "call";
        readonly name: string;
        readonly nameSpan: Span;
        readonly arguments: readonly Expression[];
      }
    /** `mean of X by G`; `by` null means over the whole table. */
    | {
        readonly kind: "group";
        readonly name: string;
        readonly nameSpan: Span;
        readonly of: Expression;
        readonly by: Expression | null;
      }
    | { readonly kind: "unary"; readonly operator: "-" | "not"; readonly operand: Expression }
    | {
        readonly kind: "binary";
        readonly operator: BinaryOperator;
        readonly operatorSpan: Span;
        readonly left: Expression;
        readonly right: Expression;
      }
    | { readonly kind: "if"; readonly condition: Expression; readonly then: Expression; readonly otherwise: Expression }
    /** `EXPR in UNIT`: how it is shown. */
    | { readonly kind: "in"; readonly operand: Expression; readonly unit: string; readonly unitSpan: Span }
    | { readonly kind: "missing" }
  );
