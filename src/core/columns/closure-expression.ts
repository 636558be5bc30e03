// Expressions of the little language behind closureFunction. `compile` is handed in, for expressions hold functions and functions hold expressions.
import type { AnyNode, AssignmentExpression, CallExpression, MemberExpression, ObjectExpression } from "acorn";
import { closureOperators, unaryOperators } from "./closure-operators.ts";
import { unsupported } from "./closure-pattern.ts";
import type { ClosureScope, Frame, Run } from "./closure-scope.ts";
import { frameUp, memberKey, memberName, placeOf } from "./closure-scope.ts";

export type Compile = (node: AnyNode, scope: ClosureScope | null) => Run;
type Members = Record<PropertyKey, unknown>;
type Callable = (...values: readonly unknown[]) => unknown;

const GLOBALS: ReadonlyMap<string, unknown> = new Map<string, unknown>([
  ["undefined", undefined],
  ["NaN", Number.NaN],
  ["Infinity", Number.POSITIVE_INFINITY],
  ["Date", Date],
  ["Math", Math],
]);

function named(name: string, scope: ClosureScope | null): Run {
  const at = placeOf(scope, name);
  if (!at) {
    if (!GLOBALS.has(name)) throw new SyntaxError(`unknown name ${name}`);
    const value = GLOBALS.get(name);
    return () => value;
  }
  const [up, place] = at;
  if (up === 0) return (e) => e[place];
  if (up === 1) return (e) => (e[0] as Frame)[place];
  return (e) => frameUp(e, up)[place];
}

/** The member's key as a closure; a fixed name is checked once. */
function keyOf(node: MemberExpression, compile: Compile, scope: ClosureScope | null): Run {
  if (node.computed) {
    const key = compile(node.property, scope);
    return (e) => memberKey(key(e));
  }
  const name = node.property.type === "Identifier" ? memberName(node.property.name) : unsupported(node.property);
  return () => name;
}

function member(node: MemberExpression, compile: Compile, scope: ClosureScope | null): Run {
  const object = compile(node.object, scope);
  if (!node.computed && node.property.type === "Identifier") {
    const name = memberName(node.property.name);
    if (node.optional) return (e) => (object(e) as Members | null | undefined)?.[name];
    return (e) => (object(e) as Members)[name];
  }
  const key = keyOf(node, compile, scope);
  return (e) => (object(e) as Members)[key(e) as PropertyKey];
}

function call(node: CallExpression, compile: Compile, scope: ClosureScope | null): Run {
  const list = node.arguments.map((each) => ({
    many: each.type === "SpreadElement",
    run: compile(each.type === "SpreadElement" ? each.argument : each, scope),
  }));
  const spread = list.some((each) => each.many);
  const [x, y] = list.map((each) => each.run);
  const all = (e: Frame): unknown[] => {
    const values: unknown[] = [];
    for (const { many, run } of list) many ? values.push(...(run(e) as unknown[])) : values.push(run(e));
    return values;
  };
  if (node.callee.type === "MemberExpression") {
    const object = compile(node.callee.object, scope);
    const key = keyOf(node.callee, compile, scope);
    const method = (e: Frame) => {
      const owner = object(e) as Members;
      return [owner, owner[key(e) as PropertyKey] as Callable] as const;
    };
    return (e) => {
      const [owner, run] = method(e);
      return Reflect.apply(run, owner, all(e));
    };
  }
  if (node.callee.type === "Super") return unsupported(node.callee);
  const run = compile(node.callee, scope);
  if (!spread && list.length === 0) return (e) => (run(e) as Callable)();
  if (!spread && list.length === 1 && x) return (e) => (run(e) as Callable)(x(e));
  if (!spread && list.length === 2 && x && y) return (e) => (run(e) as Callable)(x(e), y(e));
  return (e) => (run(e) as Callable)(...all(e));
}

function object(node: ObjectExpression, compile: Compile, scope: ClosureScope | null): Run {
  const list = node.properties.map((each) => {
    if (each.type !== "Property") return unsupported(each);
    const key = each.computed ? compile(each.key, scope) : null;
    const name =
      each.key.type === "Identifier" ? each.key.name : each.key.type === "Literal" ? String(each.key.value) : "";
    return { key: key ?? (() => name), value: compile(each.value, scope) };
  });
  return (e) => {
    const made: Members = {};
    for (const { key, value } of list) made[memberKey(key(e))] = value(e);
    return made;
  };
}

function assignment(node: AssignmentExpression, compile: Compile, scope: ClosureScope | null): Run {
  if (node.operator !== "=") return unsupported(node);
  const value = compile(node.right, scope);
  if (node.left.type === "Identifier") {
    const [up, place] = placeOf(scope, node.left.name) ?? unsupported(node.left);
    return (e) => {
      const given = value(e);
      frameUp(e, up)[place] = given;
      return given;
    };
  }
  if (node.left.type !== "MemberExpression") return unsupported(node.left);
  const owner = compile(node.left.object, scope);
  const key = keyOf(node.left, compile, scope);
  return (e) => {
    const target = owner(e) as Members;
    const name = key(e) as PropertyKey;
    const given = value(e);
    target[name] = given;
    return given;
  };
}

/** An expression as a closure. Anything that arquero does not generate throws before it could run. */
export function closureExpression(node: AnyNode, scope: ClosureScope | null, compile: Compile): Run {
  const c = (each: AnyNode): Run => compile(each, scope);
  switch (node.type) {
    case "Identifier":
      return named(node.name, scope);
    case "Literal": {
      if (node.regex) {
        const { pattern, flags } = node.regex;
        return () => new RegExp(pattern, flags);
      }
      const { value } = node;
      return () => value;
    }
    case "TemplateLiteral": {
      const texts = node.quasis.map((each) => each.value.cooked ?? "");
      const runs = node.expressions.map(c);
      return (e) => runs.reduce((text, run, i) => text + String(run(e)) + (texts[i + 1] ?? ""), texts[0] ?? "");
    }
    case "ChainExpression":
      return c(node.expression);
    case "ParenthesizedExpression":
      return c(node.expression);
    case "MemberExpression":
      return member(node, compile, scope);
    case "CallExpression":
      return call(node, compile, scope);
    case "ArrayExpression": {
      const list = node.elements.map((each) => (each && each.type !== "SpreadElement" ? c(each) : unsupported(node)));
      return (e) => list.map((run) => run(e));
    }
    case "ObjectExpression":
      return object(node, compile, scope);
    case "UnaryExpression":
      return (unaryOperators.get(node.operator) ?? unsupported(node))(c(node.argument));
    case "BinaryExpression":
    case "LogicalExpression":
      return (closureOperators.get(node.operator) ?? unsupported(node))(c(node.left), c(node.right));
    case "ConditionalExpression": {
      const [test, yes, no] = [c(node.test), c(node.consequent), c(node.alternate)];
      return (e) => (test(e) ? yes(e) : no(e));
    }
    case "SequenceExpression": {
      const list = node.expressions.map(c);
      return (e) => list.reduce<unknown>((_, run) => run(e), undefined);
    }
    case "AssignmentExpression":
      return assignment(node, compile, scope);
    default:
      return unsupported(node);
  }
}
