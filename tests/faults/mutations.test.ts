// The demo's own files, cut short and damaged: each is read and computed to a result, or to problems with codes; nothing is thrown.
// THUMBRULE_THOROUGH=1 tries every fifth place and 200 damages of each file; otherwise a sample of them, the same each time.
import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { descriptionFromJson, readingWarnings, readTable } from "../../src/core/records/index.ts";
import { createNotebookEngine } from "../../src/notebook/engine/index.ts";
import { seeded } from "../demo/seeded.ts";
import { rowsOf } from "../support/rows-of.ts";

const thorough = process.env.THUMBRULE_THOROUGH !== undefined;
const folder = new URL("../../notebooks/", import.meta.url);
const named = (place: string, ending: string) =>
  readdirSync(new URL(place, folder))
    .filter((name) => name.endsWith(ending))
    .map((name) => `${place}${name}`);
const notebooks = named("./", ".md");
const tables = named("./records/", ".csv");
const descriptions = named("./records/", ".about.json");
const read = async (path: string): Promise<Uint8Array | null> => {
  try {
    return readFileSync(new URL(path, folder));
  } catch {
    return null;
  }
};

/** Letters, marks and bytes that mean something to a notebook or a table, or nothing to anybody. */
const PIECES = [
  "",
  "`",
  "```",
  '"',
  ",",
  ";",
  "\n",
  "\r",
  "\t",
  "\0",
  "(",
  ")",
  "-",
  "^",
  "1e400",
  "0",
  "\u202e",
  "é",
].concat(["\ud800", "---", "\n\n", "=", ": ", "[", "{", "#", "%", "'", "__proto__", "9".repeat(400), " in m", " per "]);

/** A text with one to four pieces of it replaced, doubled, moved or taken away. */
function damaged(text: string, stream: ReturnType<typeof seeded>): string {
  let now = text;
  for (let times = 1 + Math.floor(stream.uniform() * 4); times > 0; times--) {
    const from = Math.floor(stream.uniform() * now.length);
    const to = Math.min(now.length, from + Math.floor(stream.uniform() * 12));
    const kept = stream.uniform() < 0.3 ? now.slice(from, to).repeat(2) : stream.pick(PIECES);
    now = now.slice(0, from) + kept + now.slice(to);
  }
  return now;
}

/** Prefixes of a text and damages of it. */
function* variants(name: string, text: string, sample: { readonly step: number; readonly damages: number }) {
  for (let end = 0; end <= text.length; end += thorough ? 5 : sample.step) yield text.slice(0, end);
  const stream = seeded(20260314, name);
  for (let at = thorough ? 200 : sample.damages; at > 0; at--) yield damaged(text, stream);
}

/** No number that JSON cannot hold, anywhere in a value. */
function finite(value: unknown): boolean {
  if (typeof value === "number") return Number.isFinite(value);
  return typeof value !== "object" || value === null || Object.values(value).every(finite);
}

const longTest = thorough ? 600_000 : 60_000;

describe.each(notebooks)("%s", (path) => {
  it("comes to results or to problems with codes, however it is cut and damaged", { timeout: longTest }, async () => {
    const text = readFileSync(new URL(path, folder), "utf8");
    const engine = createNotebookEngine({ readFile: read, schedule: setImmediate, asOf: null, version: "test" });
    for (const variant of variants(path, text, { step: 149, damages: 10 })) {
      engine.update(variant, path);
      await engine.settled();
      const { entries, problems } = engine.result();
      const faults = problems.filter(({ code, sentence }) => code === "defect" || sentence === "");
      expect([faults, finite(entries)], JSON.stringify(variant)).toEqual([[], true]);
      for (const { name } of entries) engine.trace(name);
    }
    engine.dispose();
  });
});

describe.each(tables)("%s", (path) => {
  it("is read to cells and known codes, however it is cut and damaged", { timeout: longTest }, () => {
    const text = readFileSync(new URL(path, folder), "utf8");
    for (const variant of variants(path, text, { step: 97, damages: 25 })) {
      const { tables, warnings, setAside } = readTable(new TextEncoder().encode(variant), path);
      const unknown = [...warnings, ...setAside].filter(({ code }) => !readingWarnings.has(code));
      expect([unknown, finite(tables.map(rowsOf))], JSON.stringify(variant)).toEqual([[], true]);
    }
  });
});

describe.each(descriptions)("%s", (path) => {
  it("is understood, or refused with its code, however it is cut and damaged", () => {
    const text = readFileSync(new URL(path, folder), "utf8");
    for (const variant of variants(path, text, { step: 5, damages: 200 })) {
      const read = descriptionFromJson(variant);
      expect(read.ok || read.refusal.code, JSON.stringify(variant)).toBe(read.ok || "description-not-understood");
    }
  });
});
