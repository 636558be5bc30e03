// A reference case of wood physics as it lies on the disk.
export type PhysicsValue = {
  readonly value: unknown;
  readonly unit: string;
  readonly tolerance_relative?: number;
  readonly tolerance_absolute?: number;
};
export type PhysicsCase = {
  readonly id: string;
  readonly quantity: string;
  readonly section: number;
  readonly inputs: Readonly<Record<string, PhysicsValue>>;
  readonly expected: Readonly<Record<string, PhysicsValue>>;
  /** Where the case's file lies: files that it names are relative to it. */
  readonly folder?: string;
};
