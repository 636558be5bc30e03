import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import fc from "fast-check";
import { afterAll, beforeAll, expect, it } from "vitest";
import { openInside, safePath } from "../../../src/server/workspace/safe-path.ts";

const endings = [".md", ".csv"];
const home = mkdtempSync(join(tmpdir(), "safe-path-"));
beforeAll(() => {
  mkdirSync(join(home, "shop", "records"), { recursive: true });
  writeFileSync(join(home, "shop", "a.md"), "here");
  writeFileSync(join(home, "outside.md"), "outside");
  symlinkSync(join(home, "outside.md"), join(home, "shop", "link.md"));
  symlinkSync(join(home, "shop", "a.md"), join(home, "shop", "inner.md"));
  symlinkSync(home, join(home, "shop", "up"));
});
afterAll(() => rmSync(home, { recursive: true }));

it.each(["a.md", "records/tops.csv", "Fichte & Zeder.md", "ñandú.md"])("takes %s", (name) =>
  expect(safePath(name, endings)).toBe(name),
);

it.each([
  "",
  ".",
  "..",
  "../a.md",
  "a/../b.md",
  "/etc/a.md",
  "a//b.md",
  "a\\b.md",
  "C:a.md",
  "a.md\0.csv",
  "con.md",
  "records/NUL.csv",
  ".git/a.md",
  ".a.md",
  "a.md.",
  "a.md ",
  "a.js",
  "package.json",
  "a.md/",
  `${"a".repeat(300)}.md`,
])("refuses %j", (name) => expect(safePath(name, endings)).toBeNull());

it("never lets a name have an empty, dotted or absolute part, whatever it is made of", () => {
  fc.assert(
    fc.property(
      fc.array(fc.constantFrom("..", ".", "/", "\\", "a", ":", "\0", ".md", "%2e", "con"), { maxLength: 12 }),
      (bits) => {
        const path = safePath(bits.join(""), endings);
        if (path !== null) for (const part of path.split("/")) expect(part).toMatch(/^[^.:\\\0][^:\\\0]*$/);
      },
    ),
    { seed: 20260314 },
  );
});

const text = async (name: string) => {
  const handle = await openInside(join(home, "shop"), name);
  const bytes = await handle?.readFile("utf8");
  await handle?.close();
  return bytes ?? null;
};

it("opens a file, and a link that stays inside", async () => {
  expect(await text("a.md")).toBe("here");
  expect(await text("inner.md")).toBe("here");
});

it("does not open a link that leads out, a file behind one, a folder, or what is not there", async () => {
  for (const name of ["link.md", "up/outside.md", "records", "nothing.md"]) expect(await text(name)).toBeNull();
});
