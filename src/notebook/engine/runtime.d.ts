// The types that @observablehq/runtime 6.0.1 does not ship; only what reactive-graph.ts uses.
declare module "@observablehq/runtime" {
  export interface Observer {
    pending?(): void;
    fulfilled?(value: unknown, name?: string): void;
    rejected?(error: Error & { input?: string }, name?: string): void;
  }
  export interface Variable {
    define(name: string, inputs: readonly string[], definition: (...a: never[]) => unknown): Variable;
    delete(): Variable;
  }
  export interface Module {
    variable(observer?: Observer): Variable;
  }
  export class Runtime {
    constructor(builtins?: Record<string, unknown>, global?: (name: string) => unknown);
    module(): Module;
    dispose(): void;
    readonly _computing: Promise<void> | null;
    readonly _disposed: boolean;
    _computeNow(): Promise<void>;
  }
}
