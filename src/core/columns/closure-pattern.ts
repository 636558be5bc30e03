// Parameters and declared names: plain, or taken out of an array or an object.
import type { AnyNode, Pattern } from "acorn";
import type { Assign, ClosureScope } from "./closure-scope.ts";
import { memberName, placeIn } from "./closure-scope.ts";

/** Refuses syntax that arquero does not generate. */
export function unsupported(node: { readonly type: string }): never {
  throw new SyntaxError(`not supported: ${node.type}`);
}

const propertyName = (key: AnyNode): string =>
  memberName(key.type === "Identifier" ? key.name : key.type === "Literal" ? String(key.value) : unsupported(key));

/** What assigns a value to the names of a pattern. */
export function closurePattern(pattern: Pattern, scope: ClosureScope): Assign {
  if (pattern.type === "Identifier") {
    const place = placeIn(scope, pattern.name);
    return (e, value) => {
      e[place] = value;
    };
  }
  if (pattern.type === "ArrayPattern") {
    const list = pattern.elements.map((element) => (element ? closurePattern(element, scope) : null));
    return (e, value) => {
      for (const [i, assign] of list.entries()) assign?.(e, (value as unknown[])[i]);
    };
  }
  if (pattern.type === "ObjectPattern") {
    const list = pattern.properties.map((each) =>
      each.type === "Property"
        ? ([propertyName(each.key), closurePattern(each.value, scope)] as const)
        : unsupported(each),
    );
    return (e, value) => {
      for (const [name, assign] of list) assign(e, (value as Record<string, unknown>)[name]);
    };
  }
  return unsupported(pattern);
}

/** A parameter: null if its value simply stands in its place; else what takes it apart. Keeps one place per parameter. */
export function parameterPattern(
  pattern: Pattern,
  scope: ClosureScope,
): { readonly place: string; readonly take: Pattern | null } {
  if (pattern.type === "Identifier") {
    placeIn(scope, pattern.name);
    return { place: pattern.name, take: null };
  }
  const place = ` ${scope.names.size}`;
  placeIn(scope, place);
  return { place, take: pattern };
}
