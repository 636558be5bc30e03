// One value of the stack while a block of rows is computed: numbers, and what each source of error adds to them.

/** Rows that are computed at once: the cost of a step is paid once a block and not once a row. */
export const BLOCK = 1024;

/** Buffers of one block, used again and again. */
export type Buffers = { readonly take: () => Float64Array; readonly give: (buffer: Float64Array) => void };

/** `errors`: by source, (d value / d source) * standard uncertainty of the source, signed. No entry is no error. */
export type StackValue = { readonly numbers: Float64Array; readonly errors: ReadonlyMap<string, Float64Array> };

/** A store of buffers that grows with the depth of the formula, not with its length. */
export function blockBuffers(): Buffers {
  const free: Float64Array[] = [];
  return { take: () => free.pop() ?? new Float64Array(BLOCK), give: (buffer) => free.push(buffer) };
}

/** Gives the buffers of a value back. */
export function release({ numbers, errors }: StackValue, buffers: Buffers): void {
  buffers.give(numbers);
  for (const buffer of errors.values()) buffers.give(buffer);
}

/** What is not finite is missing: 1/0 must not become a zero one division later. */
export function finiteOnly(numbers: Float64Array, count: number): void {
  for (let i = 0; i < count; i++) if (!Number.isFinite(numbers[i])) numbers[i] = Number.NaN;
}

/** The errors of a result: the sum over its operands of the partial derivative (by row) times the operand's errors. */
export function combinedErrors(
  operands: readonly StackValue[],
  partials: readonly Float64Array[],
  count: number,
  buffers: Buffers,
): Map<string, Float64Array> {
  const errors = new Map<string, Float64Array>();
  for (const [k, operand] of operands.entries()) {
    const partial = partials[k] ?? operand.numbers;
    for (const [source, error] of operand.errors) {
      let sum = errors.get(source);
      if (!sum) {
        sum = buffers.take().fill(0);
        errors.set(source, sum);
      }
      for (let i = 0; i < count; i++) {
        const [slope, own] = [partial[i] as number, error[i] as number];
        // No error is no error, however steep; and the branch that is not taken adds nothing, though it be missing.
        if (slope !== 0 && own !== 0) sum[i] = (sum[i] as number) + slope * own;
      }
    }
  }
  return errors;
}
