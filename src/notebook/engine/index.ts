export { createNotebookEngine, type EngineOptions, type NotebookEngine } from "./create-notebook-engine.ts";
export { entryKinds } from "./entries/entry-kinds.ts";
export type { EntryKind } from "./entry-kind.ts";
export type { AmountResult, EntryResult, NotebookResult, TableResult } from "./entry-result.ts";
export { methods, questionMethodNames } from "./methods.ts";
export { type GraphOptions, type ReactiveGraph, reactiveGraph, type Schedule } from "./reactive-graph.ts";
export { resolvedPath } from "./resolved-path.ts";
export { sameValue } from "./same-value.ts";
