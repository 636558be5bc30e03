// How many draws a run makes and from which seed, and whether it takes all there are instead.
import { declined, type InputSpec, type MethodInputs, type Outcome, succeeded } from "../../base/index.ts";
import { usualSeed } from "./usual-seed.ts";

const DRAWS = 10_000;
const MOST_DRAWS = 1_000_000;

/** The inputs as a record lists them. what: what is drawn, in the plural; few: up to how many are all taken, in words. */
export const drawsInputs = (what: string, few: string): Readonly<Record<"mode" | "draws" | "seed", InputSpec>> => ({
  mode: {
    kind: "choice",
    choices: ["exact", "drawn"],
    optional: true,
    meaning: `every one of the ${what} (exact), or drawn ones; every one where there are ${few} unless given`,
  },
  draws: {
    kind: "number",
    atLeast: 100,
    atMost: MOST_DRAWS,
    whole: true,
    optional: true,
    meaning: `${what} drawn, ${DRAWS} unless given`,
  },
  seed: {
    kind: "number",
    atLeast: 0,
    whole: true,
    optional: true,
    meaning: `seed of the draws, ${usualSeed} unless given`,
  },
});

export type Draws = { readonly mode: "exact" | "drawn" | null; readonly draws: number; readonly seed: number };

/** The draws of a run. */
export function drawsFrom({ mode, draws = DRAWS, seed = usualSeed }: MethodInputs): Outcome<Draws> {
  if (typeof draws !== "number" || !Number.isInteger(draws) || draws < 100 || draws > MOST_DRAWS)
    return declined("out-of-domain", { name: "draws", needed: `a whole number from 100 to ${MOST_DRAWS}` });
  if (typeof seed !== "number" || !Number.isSafeInteger(seed) || seed < 0)
    return declined("out-of-domain", { name: "seed", needed: "a whole number from 0" });
  if (mode !== undefined && mode !== "exact" && mode !== "drawn")
    return declined("out-of-domain", { name: "mode", needed: "exact or drawn" });
  return succeeded({ mode: mode ?? null, draws, seed });
}
