// Gauges, species and tables of real wood.
import type { PhysicsAdapters } from "./physics-adapter.ts";

export const recordsAdapters: PhysicsAdapters = {};
