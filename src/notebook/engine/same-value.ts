// The cut-off of the graph: a cell that computes an equal value again hands on its old one, and the wave stops there.

const isTyped = (value: unknown): value is Float64Array | Int32Array | Int8Array | Uint8Array =>
  value instanceof Float64Array ||
  value instanceof Int32Array ||
  value instanceof Int8Array ||
  value instanceof Uint8Array;

function sameTyped(a: Float64Array | Int32Array | Int8Array | Uint8Array, b: unknown): boolean {
  if (!isTyped(b) || a.constructor !== b.constructor || a.length !== b.length) return false;
  for (let i = 0; i < a.length; i++) if (!Object.is(a[i], b[i])) return false;
  return true;
}

function sameMaps(a: ReadonlyMap<unknown, unknown>, b: ReadonlyMap<unknown, unknown>, depth: number): boolean {
  if (a.size !== b.size) return false;
  const others = b.entries();
  for (const [key, value] of a) {
    const other = others.next().value;
    if (other === undefined || !Object.is(key, other[0]) || !sameAt(value, other[1], depth + 1)) return false;
  }
  return true;
}

function sameRecords(a: object, b: object, depth: number): boolean {
  const keys = Object.keys(a);
  if (keys.length !== Object.keys(b).length) return false;
  return keys.every((key) => Object.hasOwn(b, key) && sameAt(Reflect.get(a, key), Reflect.get(b, key), depth + 1));
}

function sameAt(a: unknown, b: unknown, depth: number): boolean {
  if (Object.is(a, b)) return true;
  if (typeof a !== "object" || typeof b !== "object" || a === null || b === null || depth > 64) return false;
  if (isTyped(a)) return sameTyped(a, b);
  if (Array.isArray(a)) {
    return Array.isArray(b) && a.length === b.length && a.every((value, i) => sameAt(value, b[i], depth + 1));
  }
  if (a instanceof Map) return b instanceof Map && sameMaps(a, b, depth);
  if (isTyped(b) || Array.isArray(b) || b instanceof Map) return false;
  return sameRecords(a, b, depth);
}

/** Whether two values are equal to the last bit: primitives by identity (NaN equals NaN), typed arrays, arrays, maps (in
 * order) and records by content. Functions are equal only to themselves, so a table read anew is a new table. */
export const sameValue = (a: unknown, b: unknown): boolean => sameAt(a, b, 0);
