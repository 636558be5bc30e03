import { declined, type Outcome, succeeded } from "../../base/index.ts";
import type { Model, ModelStep } from "./model.ts";
import { Misread, modelGrammar } from "./model-grammar.ts";
import { type ModelToken, modelTokens } from "./model-tokens.ts";

const LONGEST = 4000;
const MOST_STEPS = 4000;

type Equation = { readonly name: string; readonly tokens: readonly ModelToken[] };

/** The steps of one equation; the name of another equation is replaced by its formula. */
function stepsOf(equation: Equation, equations: ReadonlyMap<string, Equation>, inputs: string[]): ModelStep[] {
  const steps: ModelStep[] = [];
  const open: string[] = [];
  const add = (step: ModelStep): void => {
    if (steps.push(step) > MOST_STEPS) throw new Misread("it is too long");
  };
  function read(one: Equation): void {
    if (open.includes(one.name)) throw new Misread(`${one.name} is defined by itself`);
    open.push(one.name);
    modelGrammar({ tokens: one.tokens, at: 0, add, named });
    open.pop();
  }
  function named(name: string): void {
    const definition = equations.get(name);
    if (definition) read(definition);
    else if (name === "pi") add({ kind: "number", value: Math.PI });
    else {
      if (!inputs.includes(name)) inputs.push(name);
      add({ kind: "input", at: inputs.indexOf(name) });
    }
  }
  read(equation);
  return steps;
}

function equationFrom(part: string): Equation {
  const sides = part.split("=");
  if (sides.length > 2) throw new Misread("an equation has two equals signs");
  const left = sides.length === 2 ? modelTokens(sides[0] ?? "") : null;
  const name = left?.tokens[0]?.text ?? "";
  if (left && (left.rest !== null || left.tokens.length !== 2 || left.tokens[0]?.kind !== "name"))
    throw new Misread(`"${sides[0]?.trim()}" is no name for a result`);
  const { tokens, rest } = modelTokens(sides.at(-1) ?? "");
  if (rest !== null) throw new Misread(`"${rest.slice(0, 20)}" is not understood`);
  return { name, tokens };
}

function modelsOf(text: string): readonly Model[] {
  if (text.length > LONGEST) throw new Misread("it is too long");
  const parts = text.split(/[,;\n]/).filter((part) => part.trim() !== "");
  const all = parts.map(equationFrom);
  if (all.length === 0) throw new Misread("it is empty");
  const named = new Map(all.filter(({ name }) => name !== "").map((one) => [one.name, one] as const));
  const unnamed = all.filter(({ name }) => name === "");
  if (named.size + unnamed.length !== all.length || unnamed.length > 1)
    throw new Misread("each result needs a name of its own");
  const used = new Set(
    all.flatMap(({ tokens }) => tokens.filter(({ kind }) => kind === "name").map((one) => one.text)),
  );
  const inputs: string[] = [];
  const models = all
    .filter(({ name }) => name === "" || !used.has(name))
    .map((one) => ({ name: one.name, inputs, steps: stepsOf(one, named, inputs) }));
  if (models.length === 0) throw new Misread("every equation is used by another, so there is no result");
  return models;
}

/**
 * The results that a text defines: `m / (L * W * h)` is one without a name; `R = V / I * cos(phi), Z = V / I` are two.
 * Equations are set apart by commas; one that another uses is a step on the way and no result. Inputs stand in the order in which they are met,
 * the same for all results. Signs: + - * / ^ (right to left, before the sign), brackets, the elementary functions, pi.
 */
export function modelFromText(text: string): Outcome<readonly Model[]> {
  try {
    return succeeded(modelsOf(text));
  } catch (trouble) {
    if (trouble instanceof Misread) return declined("model-not-understood", { reason: trouble.message });
    throw trouble;
  }
}
