// A stand-in for the global function constructor that never makes code: arquero's generated text is parsed (acorn) and becomes closures over
// flat frames. It covers what arquero 8 generates; anything else throws before it runs. `constructor`, `prototype` and `__proto__` are refused,
// so no table expression can climb out to the real one.
import { type AnyNode, type ArrowFunctionExpression, type FunctionExpression, parse } from "acorn";
import { closureExpression } from "./closure-expression.ts";
import { closurePattern, parameterPattern, unsupported } from "./closure-pattern.ts";
import type { ClosureScope, Frame, Run } from "./closure-scope.ts";
import { placeIn } from "./closure-scope.ts";

/** A statement gives this back when it returned; the value is in it. Read at once, so one is enough. */
const RETURNED: { value: unknown } = { value: undefined };

function functionOf(node: FunctionExpression | ArrowFunctionExpression, outer: ClosureScope | null): Run {
  const scope: ClosureScope = { outer, names: new Map() };
  const parameters = node.params.map((each) => parameterPattern(each, scope));
  const takes = parameters
    .map(({ place, take }) => (take ? { at: placeIn(scope, place), assign: closurePattern(take, scope) } : null))
    .filter((each) => each !== null);
  const run = compile(node.body, scope);
  const finish: Run =
    node.body.type === "BlockStatement" ? (e) => (run(e) === RETURNED ? RETURNED.value : undefined) : run;
  const count = parameters.length;
  if (takes.length === 0 && scope.names.size === count) {
    if (count === 0) return (e) => () => finish([e]);
    if (count === 1) return (e) => (a: unknown) => finish([e, a]);
    if (count === 2) return (e) => (a: unknown, b: unknown) => finish([e, a, b]);
    if (count === 3) return (e) => (a: unknown, b: unknown, d: unknown) => finish([e, a, b, d]);
  }
  return (e) =>
    (...values: readonly unknown[]) => {
      const frame: Frame = [e];
      for (let i = 0; i < count; i++) frame[i + 1] = values[i];
      for (const { at, assign } of takes) assign(frame, frame[at]);
      return finish(frame);
    };
}

function compile(node: AnyNode, scope: ClosureScope | null): Run {
  const c = (each: AnyNode): Run => compile(each, scope);
  switch (node.type) {
    case "FunctionExpression":
    case "ArrowFunctionExpression":
      return functionOf(node, scope);
    case "BlockStatement": {
      const list = node.body.filter((each) => !("directive" in each && each.directive)).map(c);
      return (e) => {
        for (let i = 0; i < list.length; i++) if (list[i]?.(e) === RETURNED) return RETURNED;
        return undefined;
      };
    }
    case "ReturnStatement": {
      const value = node.argument ? c(node.argument) : () => undefined;
      return (e) => {
        RETURNED.value = value(e);
        return RETURNED;
      };
    }
    case "ExpressionStatement": {
      const run = c(node.expression);
      return (e) => {
        run(e);
      };
    }
    case "EmptyStatement":
      return () => undefined;
    case "IfStatement": {
      const [test, yes, no] = [c(node.test), c(node.consequent), node.alternate ? c(node.alternate) : () => undefined];
      return (e) => (test(e) ? yes(e) : no(e));
    }
    case "VariableDeclaration": {
      if (!scope) return unsupported(node);
      const list = node.declarations.map((each) => ({
        value: each.init ? c(each.init) : () => undefined,
        assign: closurePattern(each.id, scope),
      }));
      return (e) => {
        for (const { value, assign } of list) assign(e, value(e));
      };
    }
    default:
      return closureExpression(node, scope, compile);
  }
}

/**
 * A function out of generated text, as closures. args: parameter names, then the body's text, as of the constructor it stands in for.
 * Throws SyntaxError for what is not supported and TypeError for a member that is not allowed.
 * @example closureFunction("a", "b", "return a + b")(2, 3) -> 5
 */
export function closureFunction(...args: readonly string[]): (...values: readonly unknown[]) => unknown {
  const body = args.at(-1) ?? "";
  const program = parse(`(function(${args.slice(0, -1).join(",")}){${body}\n})`, { ecmaVersion: 2022 });
  const statement = program.body[0];
  if (
    program.body.length !== 1 ||
    statement?.type !== "ExpressionStatement" ||
    statement.expression.type !== "FunctionExpression"
  )
    throw new SyntaxError("not one function");
  return compile(statement.expression, null)([null]) as (...values: readonly unknown[]) => unknown;
}
