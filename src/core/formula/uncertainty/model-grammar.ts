import { elementaryFunctions } from "./elementary-functions.ts";
import type { ModelStep } from "./model.ts";
import type { ModelToken } from "./model-tokens.ts";

/** What was wrong with a text; caught where the text is read and said as a refusal. */
export class Misread extends Error {}

const DEEPEST = 60;

/** A formula while it is read: its tokens, the place reached, where steps go, and what a name means. */
export type ModelReading = {
  readonly tokens: readonly ModelToken[];
  at: number;
  readonly add: (step: ModelStep) => void;
  readonly named: (name: string) => void;
};

const signAt = ({ tokens, at }: ModelReading): string => {
  const token = tokens[at];
  return token?.kind === "sign" ? token.text : "";
};

function bracket(reading: ModelReading, depth: number): void {
  reading.at++;
  sum(reading, depth + 1);
  if (signAt(reading) !== ")") throw new Misread('a ")" is missing');
  reading.at++;
}

function operand(reading: ModelReading, depth: number): void {
  const token = reading.tokens[reading.at];
  if (signAt(reading) === "(") bracket(reading, depth);
  else if (token?.kind === "number") {
    reading.at++;
    reading.add({ kind: "number", value: Number(token.text) });
  } else if (token?.kind === "name") {
    reading.at++;
    if (signAt(reading) !== "(") reading.named(token.text);
    else if (Object.hasOwn(elementaryFunctions, token.text)) {
      bracket(reading, depth);
      reading.add({ kind: "call", name: token.text });
    } else throw new Misread(`there is no function "${token.text}"`);
  } else
    throw new Misread(token?.text ? `"${token.text}" stands where a number or a name is due` : "it ends too early");
}

function raised(reading: ModelReading, depth: number): void {
  operand(reading, depth);
  if (signAt(reading) !== "^") return;
  reading.at++;
  signed(reading, depth + 1);
  reading.add({ kind: "operator", operator: "^" });
}

function signed(reading: ModelReading, depth: number): void {
  const sign = signAt(reading);
  if (depth > DEEPEST) throw new Misread("it is nested too deep");
  if (sign !== "-" && sign !== "+") {
    raised(reading, depth);
    return;
  }
  reading.at++;
  if (sign === "-") reading.add({ kind: "number", value: -1 });
  signed(reading, depth + 1);
  if (sign === "-") reading.add({ kind: "operator", operator: "*" });
}

function product(reading: ModelReading, depth: number): void {
  signed(reading, depth);
  for (let sign = signAt(reading); sign === "*" || sign === "/"; sign = signAt(reading)) {
    reading.at++;
    signed(reading, depth);
    reading.add({ kind: "operator", operator: sign });
  }
}

function sum(reading: ModelReading, depth: number): void {
  product(reading, depth);
  for (let sign = signAt(reading); sign === "+" || sign === "-"; sign = signAt(reading)) {
    reading.at++;
    product(reading, depth);
    reading.add({ kind: "operator", operator: sign });
  }
}

/** Reads one formula to its end, by precedence: sum, product, sign, power (right to left), operand. */
export function modelGrammar(reading: ModelReading): void {
  sum(reading, 0);
  const token = reading.tokens[reading.at];
  if (token?.kind !== "end") throw new Misread(`"${token?.text}" stands where a sign or the end is due`);
}
