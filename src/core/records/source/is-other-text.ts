// What is text and yet no table: markup and JSON, by what stands in it; the name decides only where the content leaves it open.
const MARKUP = /^<(?:\?xml|!doctype|html|svg)[\s>]/i;

function parses(text: string): boolean {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
}

/**
 * Whether a text is markup or JSON and not delimited text. `text`: the whole text; `file`: its name. A text in the brackets of
 * JSON which is not whole is taken for JSON only under a name that says so, since a heading may be in brackets: `[mm],[g]`.
 */
export function isOtherText(text: string, file: string): boolean {
  const inner = text.trim();
  if (MARKUP.test(inner.slice(0, 16))) return true;
  if (!inner.startsWith("{") && !inner.startsWith("[")) return false;
  if (/\.(?:json|geojson)$/i.test(file)) return true;
  return (inner.endsWith("}") || inner.endsWith("]")) && parses(inner);
}
