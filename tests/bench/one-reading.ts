// Readings in a process of their own, which the bench starts: a first reading is what a maker waits for, and memory is a process's.
import { execFileSync } from "node:child_process";
import { readFileSync } from "node:fs";
import Papa from "papaparse";
import { readTable } from "../../src/core/records/index.ts";

const readers = {
  readTable: (bytes: Uint8Array): unknown => readTable(bytes, "records/large.csv"),
  papaparse: (bytes: Uint8Array): unknown => Papa.parse(new TextDecoder().decode(bytes)),
} as const;
export type ReaderName = keyof typeof readers;
/** Milliseconds of the first reading, and of the quickest later one; bytes of the file; bytes more than before it, once all else is collected, and at most. */
export type ReadingCost = {
  readonly time: number;
  readonly again: number;
  readonly size: number;
  readonly kept: number;
  readonly peak: number;
};

/** Bytes in use once all else is collected; typed arrays are given back a moment after. */
const inUse = async () => {
  for (let time = 0; time < 2; time++) {
    globalThis.gc?.();
    await new Promise(setImmediate);
  }
  const { heapUsed, external } = process.memoryUsage();
  return heapUsed + external;
};

const LATER = 5;

/** Reads a file here, first once, then a few times more. Memory in use is counted after collecting garbage; the peak is the process's largest resident set. */
export async function costHere(file: string, reader: ReaderName): Promise<ReadingCost> {
  const bytes = readFileSync(file);
  const before = await inUse();
  const resident = process.memoryUsage().rss;
  const start = performance.now();
  const result = readers[reader](bytes);
  const time = performance.now() - start;
  const peak = process.resourceUsage().maxRSS * 1024 - resident;
  const kept = (await inUse()) - before;
  let again = Number.POSITIVE_INFINITY;
  for (let round = 0; round < LATER; round++) {
    const from = performance.now();
    readers[reader](bytes);
    again = Math.min(again, performance.now() - from);
  }
  // Named here, so that neither the file nor what was read is collected before.
  return result === null
    ? Promise.reject(new Error("nothing was read"))
    : { time, again, size: bytes.length, kept, peak };
}

export const ONE_READING = "--one-reading";

/** Reads a file in a new process of this program. */
export const costOfReading = (file: string, reader: ReaderName): ReadingCost =>
  JSON.parse(
    execFileSync(process.execPath, ["--expose-gc", process.argv[1] ?? "", ONE_READING, file, reader], {
      encoding: "utf8",
    }),
  ) as ReadingCost;
