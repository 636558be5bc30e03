import fc from "fast-check";
import { it } from "vitest";

const seed = Number(process.env.THUMBRULE_SEED ?? 20260314);

/** A law on random input: seeded, so that a failure comes back; fast-check prints seed and the shrunk case. THUMBRULE_SEED changes it. */
export function law<T extends [unknown, ...unknown[]]>(
  sentence: string,
  arbitraries: { [K in keyof T]: fc.Arbitrary<T[K]> },
  holds: (...values: T) => unknown,
  runs = 200,
): void {
  it(`${sentence} (seed ${seed})`, async () => {
    await fc.assert(
      fc.asyncProperty(
        ...(arbitraries as unknown as [fc.Arbitrary<unknown>]),
        (async (...values: T) => (await holds(...values)) !== false) as unknown as (value: unknown) => Promise<boolean>,
      ),
      {
        seed,
        numRuns: runs,
      },
    );
  });
}
