// Units and written numbers.
import type { PhysicsAdapters } from "./physics-adapter.ts";

export const writtenAdapters: PhysicsAdapters = {};
