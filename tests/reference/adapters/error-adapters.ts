// Uncertainty and tests of rules.
import type { PhysicsAdapters } from "./physics-adapter.ts";

export const errorAdapters: PhysicsAdapters = {};
