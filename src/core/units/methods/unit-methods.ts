// What the catalogue of methods offers of units and of pitch.
import type { Method } from "../../base/index.ts";
import { noteFrequency } from "./note-frequency.ts";
import { noteOfFrequency } from "./note-of-frequency.ts";
import { unitConversion } from "./unit-conversion.ts";

export const unitMethods: readonly Method[] = [unitConversion, noteFrequency, noteOfFrequency];
