import { power } from "../../base/index.ts";
import { elementaryFunctions } from "./elementary-functions.ts";
import type { Model } from "./model.ts";

function operated(operator: "+" | "-" | "*" | "/" | "^", x: Float64Array, y: Float64Array, count: number): void {
  switch (operator) {
    case "+":
      for (let i = 0; i < count; i++) x[i] = (x[i] as number) + (y[i] as number);
      return;
    case "-":
      for (let i = 0; i < count; i++) x[i] = (x[i] as number) - (y[i] as number);
      return;
    case "*":
      for (let i = 0; i < count; i++) x[i] = (x[i] as number) * (y[i] as number);
      return;
    case "/":
      for (let i = 0; i < count; i++) x[i] = (x[i] as number) / (y[i] as number);
      return;
    case "^":
      for (let i = 0; i < count; i++) x[i] = power(x[i] as number, y[i] as number);
  }
}

/**
 * A model made ready for many places at once: a step of the model is one loop over a block, so its cost is paid once a block and not once a draw.
 * block: the largest count; result: a function of the inputs' lists that writes the model's values into a list from `from` on.
 */
export function modelOnDraws(
  model: Model,
  block: number,
): (inputs: readonly Float64Array[], count: number, into: Float64Array, from: number) => void {
  const buffers: Float64Array[] = [];
  const buffer = (at: number): Float64Array => {
    buffers[at] ??= new Float64Array(block);
    return buffers[at];
  };
  return (inputs, count, into, from) => {
    let depth = 0;
    for (const step of model.steps) {
      if (step.kind === "number") buffer(depth++).fill(step.value, 0, count);
      else if (step.kind === "input") buffer(depth++).set((inputs[step.at] as Float64Array).subarray(0, count));
      else if (step.kind === "call") {
        const { value } = elementaryFunctions[step.name] as (typeof elementaryFunctions)[string];
        const x = buffer(depth - 1);
        for (let i = 0; i < count; i++) x[i] = value(x[i] as number);
      } else {
        depth--;
        operated(step.operator, buffer(depth - 1), buffer(depth), count);
      }
    }
    into.set(buffer(0).subarray(0, count), from);
  };
}
