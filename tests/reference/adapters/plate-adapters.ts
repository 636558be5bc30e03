// Plates.
import type { PhysicsAdapters } from "./physics-adapter.ts";

export const plateAdapters: PhysicsAdapters = {};
