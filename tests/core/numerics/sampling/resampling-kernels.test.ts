import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  chiSquareUpperTail,
  drawnSignedSums,
  drawToFront,
  everyMultiset,
  everySubset,
  fillIndices,
  generatorFromSeed,
  indexFromWord,
  multisetsOf,
  outerSums,
  pairDifferenceOfRank,
  permutedProductSums,
  rankSumDistribution,
  shuffledProductSums,
  signedSums,
  subsetsOf,
} from "../../../../src/core/numerics/index.ts";
import { closeTo } from "../../../support/close-to.ts";
import { law } from "../../../support/law.ts";

const ascending = (list: ArrayLike<number>) => Array.from(list).sort((a, b) => a - b);
/** Upper tail of chi-square for counts that should be equal. */
const evenness = (counts: readonly number[]) => {
  const expected = counts.reduce((sum, count) => sum + count, 0) / counts.length;
  return chiSquareUpperTail(
    counts.reduce((sum, count) => sum + (count - expected) ** 2 / expected, 0),
    counts.length - 1,
  );
};

describe("words", () => {
  it("are those behind next, and go on where it stopped", () => {
    const [one, other] = [generatorFromSeed(5), generatorFromSeed(5)];
    const words = new Uint32Array(8);
    expect(one.next()).toBe(other.next());
    one.fillWords(words);
    for (let i = 0; i < 8; i += 2)
      expect(((words[i]! >>> 5) * 2 ** 26 + (words[i + 1]! >>> 6)) / 2 ** 53).toBe(other.next());
    expect(one.next()).toBe(other.next());
  });

  it("make every index equally often", () => {
    const [indices, words] = [new Int32Array(70_000), new Uint32Array(70_000)];
    fillIndices(generatorFromSeed(2), indices, 7, words);
    const counts = Array.from({ length: 7 }, (_, at) => indices.filter((index) => index === at).length);
    expect(evenness(counts)).toBeGreaterThan(1e-4);
  });

  it("are drawn anew where they are surplus", () => {
    // 2^32 = 3 × 1431655765 + 1: word 0 is the one too many.
    const next = { ...generatorFromSeed(1), fillWords: (words: Uint32Array) => void words.fill(2 ** 32 - 1) };
    expect(indexFromWord(0, 3, next)).toBe(2);
    expect(indexFromWord(1431655766, 3, next)).toBe(1);
    expect(indexFromWord(1, 3, next)).toBe(0);
  });
});

describe("arrangements", () => {
  it("takes every order", () => {
    expect(ascending(permutedProductSums([1, 2, 4], [1, 10, 100]))).toEqual([124, 142, 214, 241, 412, 421]);
    expect(ascending(permutedProductSums([1, 2], [10, 30]))).toEqual([50, 70]);
  });

  it("takes every subset once", () => {
    const seen = new Set<string>();
    everySubset(6, 3, (chosen) => seen.add(chosen.join()));
    expect([seen.size, subsetsOf(6, 3)]).toEqual([20, 20]);
    expect(subsetsOf(50, 25)).toBe(126410606437752);
    let calls = 0;
    everySubset(3, 0, () => calls++);
    expect(calls).toBe(1);
  });

  it("takes every multiset with the draws that amount to it", () => {
    const weights = new Map<string, number>();
    everyMultiset(3, (counts, weight) => weights.set(counts.join(""), weight));
    expect([weights.size, multisetsOf(3)]).toEqual([10, 10]);
    expect([weights.get("300"), weights.get("210"), weights.get("111")]).toEqual([1, 3, 6]);
    let all = 0;
    everyMultiset(9, (_, weight) => {
      all += weight;
    });
    expect(all).toBe(9 ** 9);
  });

  it("adds every pair of blocks and every choice of signs", () => {
    expect(
      ascending(
        outerSums([
          [1, -1],
          [10, 20, 30],
        ]),
      ),
    ).toEqual([9, 11, 19, 21, 29, 31]);
    expect(ascending(signedSums([1, 10]))).toEqual([-11, -9, 9, 11]);
  });
});

describe("drawn arrangements", () => {
  it("shuffles within blocks, every order equally often", () => {
    const sums = shuffledProductSums(
      Float64Array.of(1, 10, 100, 1000, 10000),
      Float64Array.of(1, 2, 3, 4, 5),
      Int32Array.of(0, 3, 5),
      24_000,
      generatorFromSeed(3),
    );
    const seen = new Map<number, number>();
    for (const sum of sums) seen.set(sum, (seen.get(sum) ?? 0) + 1);
    expect(seen.size).toBe(12);
    expect(evenness([...seen.values()])).toBeGreaterThan(1e-4);
  });

  it("moves every choice to the front equally often", () => {
    const [values, words, generator] = [Float64Array.of(1, 2, 4, 8, 16), new Uint32Array(2), generatorFromSeed(4)];
    const seen = new Map<number, number>();
    for (let draw = 0; draw < 20_000; draw++) {
      drawToFront(values, 2, generator, words);
      const sum = values[0]! + values[1]!;
      seen.set(sum, (seen.get(sum) ?? 0) + 1);
    }
    expect(seen.size).toBe(10);
    expect(evenness([...seen.values()])).toBeGreaterThan(1e-4);
  });

  it("draws each sign like a coin, beyond 32 of them too", () => {
    const terms = new Float64Array(40);
    terms[0] = 1;
    terms[33] = 2;
    terms[39] = 4;
    const seen = new Map<number, number>();
    for (const sum of drawnSignedSums(terms, 16_000, generatorFromSeed(6))) seen.set(sum, (seen.get(sum) ?? 0) + 1);
    expect(seen.size).toBe(8);
    expect(evenness([...seen.values()])).toBeGreaterThan(1e-4);
  });
});

describe("sums of ranks", () => {
  law(
    "are counted as by taking every choice",
    [fc.array(fc.integer({ min: 0, max: 9 }), { minLength: 1, maxLength: 9 }), fc.nat(9)],
    (scores, up) => {
      const size = Math.min(up, scores.length);
      const counts = new Map<number, number>();
      everySubset(scores.length, size, (chosen) => {
        const sum = chosen.reduce((total, at) => total + scores[at]!, 0);
        counts.set(sum, (counts.get(sum) ?? 0) + 1);
      });
      const { least, shares } = rankSumDistribution(scores, size);
      const all = subsetsOf(scores.length, size);
      for (const [k, share] of shares.entries())
        closeTo(share, (counts.get(least + k) ?? 0) / all, 1e-13, { scale: 1 });
      expect(Math.min(...counts.keys())).toBe(least);
      expect(Math.max(...counts.keys())).toBe(least + shares.length - 1);
    },
  );
});

describe("differences of pairs", () => {
  const list = fc.array(fc.oneof(fc.integer({ min: -5, max: 5 }), fc.double({ min: -1e3, max: 1e3, noNaN: true })), {
    minLength: 1,
    maxLength: 8,
  });
  law(
    "have the rank that sorting all of them gives",
    [list, list, fc.double({ min: 0, max: 0.999, noNaN: true })],
    (a, b, at) => {
      const all = Float64Array.from(a.flatMap((one) => b.map((other) => one - other))).sort();
      const rank = 1 + Math.floor(at * all.length);
      const found = pairDifferenceOfRank(Float64Array.from(a).sort(), Float64Array.from(b).sort(), rank);
      expect(found - all[rank - 1]!).toBe(0);
    },
  );
});
