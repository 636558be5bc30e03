// Reference cases of either kind out of files and folders.
import { readdirSync, readFileSync, statSync } from "node:fs";
import { dirname, join } from "node:path";
import type { PhysicsCase } from "./physics-case.ts";
import { type StatsCase, withData } from "./stats-case.ts";

export type AnyCase = StatsCase | PhysicsCase;

const files = (path: string): readonly string[] =>
  statSync(path).isDirectory()
    ? readdirSync(path)
        .filter((name) => name.endsWith(".json"))
        .sort()
        .map((name) => join(path, name))
    : [path];

function casesInFile(path: string): readonly AnyCase[] {
  const parsed = JSON.parse(readFileSync(path, "utf8")) as AnyCase | readonly AnyCase[];
  const cases = Array.isArray(parsed) ? (parsed as readonly AnyCase[]) : [parsed as AnyCase];
  return cases.map((one) => ("quantity" in one ? { ...one, folder: dirname(path) } : withData(one, path)));
}

/** The cases of a file, or of all JSON files of a folder in the order of their names. Throws where one is not JSON. */
export const casesIn = (path: string): readonly AnyCase[] => files(path).flatMap(casesInFile);

export const loadCases = { casesIn } as const;
