/** A diagnostic that was run: `value` beside its `limit`, whether it passed, and what that means in words. */
export type Check = {
  readonly id: string;
  readonly name: string;
  readonly value: number;
  readonly limit?: number;
  readonly passed: boolean;
  readonly sentence: string;
};
