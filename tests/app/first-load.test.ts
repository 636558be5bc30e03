// What the built page fetches before answers show, packed as the server packs it. The build runs before the tests.
import { existsSync, readFileSync } from "node:fs";
import { gzipSync } from "node:zlib";
import { expect, it } from "vitest";

const folder = new URL("../../dist/app/", import.meta.url);
type Part = {
  readonly file: string;
  readonly isEntry?: boolean;
  readonly imports?: readonly string[];
  readonly css?: readonly string[];
};

it.skipIf(!existsSync(new URL("files.json", folder)))(
  "shows answers after fetching at most 60 kB of page, and no editor",
  () => {
    const parts = JSON.parse(readFileSync(new URL("files.json", folder), "utf8")) as Record<string, Part>;
    const first = new Set(["index.html"]);
    const take = (name: string) => {
      const part = parts[name]!;
      for (const file of [part.file, ...(part.css ?? [])]) first.add(file);
      for (const more of part.imports ?? []) take(more);
    };
    for (const [name, part] of Object.entries(parts)) if (part.isEntry) take(name);
    const packed = [...first].map((file) => gzipSync(readFileSync(new URL(file, folder))).length);
    expect(packed.reduce((sum, size) => sum + size, 0)).toBeLessThan(60_000);
    expect([...first].filter((file) => /editor/.test(file))).toEqual([]);
  },
);
