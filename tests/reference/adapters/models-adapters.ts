import type { StatsAdapters } from "./stats-adapter.ts";

export const modelsAdapters: StatsAdapters = {};
