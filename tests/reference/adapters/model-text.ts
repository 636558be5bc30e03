// The formula of a case, as people write it, to the formula that a method reads: `V/I cos phi` -> `V/I*cos(phi)`.

const FUNCTIONS = new Set([
  "sqrt",
  "exp",
  "log",
  "ln",
  "log10",
  "sin",
  "cos",
  "tan",
  "asin",
  "acos",
  "atan",
  "sinh",
  "cosh",
  "tanh",
  "abs",
]);
const TOKEN = /\d+\.?\d*(?:[eE][+-]?\d+)?|\.\d+|[A-Za-z_\u0370-\u03ff]\w*|\*\*|[-+*/^()]/g;
const isName = (token: string) => /^[A-Za-z_\u0370-\u03ff]/.test(token);
const isOperand = (token: string) => /^[\w.\u0370-\u03ff]/.test(token);

const plainSigns = (text: string): string =>
  text
    .replace(/[−–]/g, "-")
    .replace(/[·×]/g, "*")
    .replace(/π/g, " pi ")
    .replace(/√/g, " sqrt ")
    .replace(/²/g, "^2")
    .replace(/³/g, "^3")
    .replace(/[[{]/g, "(")
    .replace(/[\]}]/g, ")");

/** Multiplication signs where none are written, brackets round what a function stands before. */
function explicit(formula: string): string {
  const tokens = plainSigns(formula).match(TOKEN) ?? [];
  const out: string[] = [];
  for (let i = 0; i < tokens.length; i++) {
    const token = tokens[i] ?? "";
    const before = out.at(-1) ?? "";
    const isCall = FUNCTIONS.has(before);
    if (out.length > 0 && !isCall && (isOperand(before) || before === ")") && (isOperand(token) || token === "("))
      out.push("*");
    if (isCall && token !== "(") out.push("(", token, ")");
    else out.push(token);
  }
  // A function's name was pushed bare; what followed it was bracketed above.
  return out.join(" ").replace(/(\w+) \(/g, (whole, name: string) => (FUNCTIONS.has(name) ? `${name}(` : whole));
}

export type ModelText = {
  /** Equations with all signs, for the method. */
  readonly model: string;
  /** Left sides, in order. */
  readonly named: readonly string[];
  /** Names that no equation defines, in order of appearance. */
  readonly symbols: readonly string[];
  /** Unit in which results are wanted: of "GPa out". */
  readonly unit: string | null;
  /** Units in which inputs are given, of "g and mm in"; null for SI. */
  readonly unitsIn: string | null;
};

/** Text between commas is an equation if it has an equals sign, or is all there is; other text is remarks, of which "UNIT out" counts. */
export function modelText(text: string): ModelText {
  const parts = text.split(/[,;]/).map((part) => part.trim());
  const equations = parts.some((part) => part.includes("="))
    ? parts.filter((part) => part.includes("="))
    : parts.slice(0, 1);
  const sides = equations.map((part) => {
    const [left = "", right] = part.split("=");
    return right === undefined
      ? { name: "", formula: explicit(left) }
      : { name: plainSigns(left).trim(), formula: explicit(right) };
  });
  const named = sides.map(({ name }) => name).filter((name) => name !== "");
  const symbols = new Set(
    sides
      .flatMap(({ formula }) => formula.match(TOKEN) ?? [])
      .filter((token) => isName(token) && !FUNCTIONS.has(token) && token !== "pi" && !named.includes(token)),
  );
  return {
    model: sides.map(({ name, formula }) => (name === "" ? formula : `${name} = ${formula}`)).join(", "),
    named,
    symbols: [...symbols],
    unit: /(\S+) out\b/.exec(text)?.[1] ?? null,
    unitsIn: /(?:^|[,;])(?!\s*SI\b)\s*([^,;=]+?) in\s*(?:$|[,;])/.exec(text)?.[1] ?? null,
  };
}
