// Computes a checked formula: for each block of rows, the steps in order over a stack of buffers. No code is made from text.
import { Defect, power } from "../base/index.ts";
import type { Contribution } from "../columns/index.ts";
import { binaryBlocks, binaryPartials } from "./binary-blocks.ts";
import type { FormulaInputs, NumberColumn } from "./formula-inputs.ts";
import { functionBlocks, functionPartials } from "./function-blocks.ts";
import { groupColumn } from "./group-column.ts";
import type { Buffers, StackValue } from "./stack-value.ts";
import { BLOCK, blockBuffers, combinedErrors, finiteOnly, release } from "./stack-value.ts";
import type { Step, TypedExpression } from "./typed-expression.ts";

/** Where a block lies, and what the steps read. */
type Run = {
  readonly inputs: FormulaInputs;
  readonly buffers: Buffers;
  readonly groups: ReadonlyMap<Step, NumberColumn>;
  readonly label: string;
};
type Place = { readonly from: number; readonly count: number };

function fromColumn({ numbers, errors }: NumberColumn, { from, count }: Place, buffers: Buffers): StackValue {
  const copy = (values: Float64Array): Float64Array => {
    const buffer = buffers.take();
    buffer.set(values.subarray(from, from + count));
    return buffer;
  };
  return { numbers: copy(numbers), errors: new Map([...errors].map(([source, { values }]) => [source, copy(values)])) };
}

const constant = (value: number, errors: Iterable<readonly [string, number]>, buffers: Buffers): StackValue => ({
  numbers: buffers.take().fill(value),
  errors: new Map([...errors].map(([source, error]) => [source, buffers.take().fill(error)])),
});

/** The value of a step that computes something out of operands. */
function operation(step: Step, operands: readonly StackValue[], { count }: Place, buffers: Buffers): StackValue {
  const out = buffers.take();
  const numbers = operands.map((operand) => operand.numbers);
  const [a = out, b = out, c = out] = numbers;
  const hasErrors = operands.some(({ errors }) => errors.size > 0);
  const partials = hasErrors ? operands.map(() => buffers.take().fill(0)) : [];
  const [pa = out, pb = out] = partials;
  if (step.does === "binary") {
    binaryBlocks[step.operator](a, b, out, count);
    const partial = binaryPartials[step.operator];
    if (hasErrors && partial) for (let i = 0; i < count; i++) [pa[i], pb[i]] = partial(a[i] as number, b[i] as number);
  } else if (step.does === "power") {
    const { exponent } = step;
    for (let i = 0; i < count; i++) out[i] = Number.isNaN(a[i]) ? Number.NaN : power(a[i] as number, exponent);
    if (hasErrors)
      for (let i = 0; i < count; i++) pa[i] = exponent === 0 ? 0 : exponent * power(a[i] as number, exponent - 1);
  } else if (step.does === "scale" || step.does === "negate") {
    const factor = step.does === "scale" ? step.factor : -1;
    for (let i = 0; i < count; i++) out[i] = (a[i] as number) * factor;
    if (hasErrors) pa.fill(factor);
  } else if (step.does === "not") for (let i = 0; i < count; i++) out[i] = 1 - (a[i] as number);
  else if (step.does === "is-missing") {
    for (let i = 0; i < count; i++) out[i] = (Number.isNaN(a[i]) && Number.isNaN(b[i])) === step.yes ? 1 : 0;
  } else if (step.does === "choose") {
    for (let i = 0; i < count; i++) out[i] = a[i] === 1 ? (b[i] as number) : a[i] === 0 ? (c[i] as number) : Number.NaN;
    if (hasErrors)
      for (let i = 0; i < count; i++) {
        pb[i] = a[i] === 1 ? 1 : 0;
        (partials[2] as Float64Array)[i] = a[i] === 0 ? 1 : 0;
      }
  } else if (step.does === "call") {
    functionBlocks(step.calls, numbers, out, count);
    if (hasErrors)
      functionPartials(
        step.calls,
        numbers,
        operands.map(({ errors }) => errors.size > 0),
        partials,
        count,
      );
  }
  finiteOnly(out, count);
  const errors = hasErrors ? combinedErrors(operands, partials, count, buffers) : new Map<string, Float64Array>();
  if (step.does === "call" && step.calls.scatter) {
    const scatter = buffers.take();
    functionBlocks({ evaluate: step.calls.scatter, skipsMissing: true }, numbers, scatter, count);
    errors.set(`spread of ${step.says}`, scatter);
  }
  for (const partial of partials) buffers.give(partial);
  return { numbers: out, errors };
}

const operandCount = (step: Step): number => {
  switch (step.does) {
    case "binary":
    case "power":
    case "is-missing":
      return 2;
    case "choose":
      return 3;
    case "call":
      return step.count;
    case "negate":
    case "not":
    case "scale":
      return 1;
    default:
      return 0;
  }
};

function leaf(step: Step, place: Place, { inputs, buffers, groups, label }: Run): StackValue | null {
  switch (step.does) {
    case "constant":
      return constant(
        step.value,
        step.uncertainty > 0 ? [[`${step.source} of ${label}`, step.uncertainty]] : [],
        buffers,
      );
    case "text":
      return constant(inputs.codeOfText(step.value), [], buffers);
    case "value": {
      const { value, errors } = inputs.value(step.name);
      return constant(value, errors, buffers);
    }
    case "column":
      return fromColumn(inputs.column(step.name), place, buffers);
    case "group":
      return fromColumn(groups.get(step) as NumberColumn, place, buffers);
    default:
      return null;
  }
}

/** All rows of a checked formula, with what each source of error adds. label: the name of what is computed, which tells its own numbers' errors from others'. */
export function runFormula(typed: TypedExpression, inputs: FormulaInputs, label: string): NumberColumn {
  const { rowCount } = inputs;
  const groups = new Map<Step, NumberColumn>();
  for (const step of typed.steps)
    if (step.does === "group") {
      groups.set(
        step,
        groupColumn(
          step.calls,
          runFormula(step.of, inputs, label),
          step.by ? runFormula(step.by, inputs, label).numbers : null,
          inputs.leftOut,
          step.says,
        ),
      );
    }
  const run: Run = { inputs, buffers: blockBuffers(), groups, label };
  const numbers = new Float64Array(rowCount);
  const errors = new Map<string, Contribution>();
  for (let from = 0; from < rowCount; from += BLOCK) {
    const place: Place = { from, count: Math.min(BLOCK, rowCount - from) };
    const stack: StackValue[] = [];
    for (const step of typed.steps) {
      const value = leaf(step, place, run);
      if (value) {
        stack.push(value);
        continue;
      }
      const operands = stack.splice(stack.length - operandCount(step));
      stack.push(operation(step, operands, place, run.buffers));
      for (const operand of operands) release(operand, run.buffers);
    }
    const [result] = stack;
    if (!result || stack.length !== 1) throw new Defect(`formula of ${label} left ${stack.length} values`);
    numbers.set(result.numbers.subarray(0, place.count), from);
    for (const [source, part] of result.errors) {
      const whole = errors.get(source) ?? { values: new Float64Array(rowCount), shared: inputs.isShared(source) };
      errors.set(source, whole);
      whole.values.set(part.subarray(0, place.count), from);
    }
    release(result, run.buffers);
  }
  return { numbers, errors };
}
