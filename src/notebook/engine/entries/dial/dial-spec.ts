// A dial in SI; `stands` is where the reader turned it, null where it was left.
export type DialSpec = {
  readonly start: number;
  readonly low: number;
  readonly high: number;
  readonly step: number | null;
  readonly unit: string;
  readonly stands: number | null;
};
