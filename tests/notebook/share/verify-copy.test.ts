import { expect, it } from "vitest";
import type { NotebookResult } from "../../../src/notebook/engine/index.ts";
import { copyFromBytes } from "../../../src/notebook/share/copy-from-bytes.ts";
import { copyFromEmbedded } from "../../../src/notebook/share/copy-from-embedded.ts";
import type { EmbeddedCopy } from "../../../src/notebook/share/embedded-copy.ts";
import { verifyCopy } from "../../../src/notebook/share/verify-copy.ts";
import { digest, looks, smallCopy, smallResult } from "./small-copy.ts";

const bytesOf = (text: string) => new TextEncoder().encode(text);
const good = await copyFromEmbedded(smallCopy(), smallResult(), looks, digest);
/** The records say what `smallCopy` says, whatever the copy claims. */
const compute = async () => smallResult();
const rebuild = async (copy: EmbeddedCopy, result: NotebookResult) =>
  (await copyFromEmbedded(copy, result, looks, digest)).html;
const verified = (bytes: Uint8Array) => verifyCopy(bytes, { digest, compute, rebuild, version: "0.1.0" });

it("passes a copy as it was made, and says what that does not show", async () => {
  const verification = await verified(bytesOf(good.html));
  expect(verification.problems).toEqual([]);
  expect(verification).toMatchObject({ ok: true, date: "2026-03-14", version: "0.1.0" });
  expect(verification.notShown.join("; ")).toMatch(/who made the copy; .*true/);
});

it("finds every changed byte, in the lowest bit and in the case bit", async () => {
  const bytes = bytesOf(good.html);
  const passed: number[] = [];
  for (let at = 0; at < bytes.length; at++)
    for (const bit of [0x01, 0x20]) {
      const changed = bytes.slice();
      changed[at] = (changed[at] as number) ^ bit;
      if ((await verifyCopy(changed, { digest, compute })).ok) passed.push(at);
    }
  expect(passed).toEqual([]);
});

it.each([
  ["one byte more at the end", (text: string) => `${text} `],
  ["one byte more at the start", (text: string) => ` ${text}`],
  ["a byte order mark", (text: string) => `\ufeff${text}`],
  ["one byte less", (text: string) => text.slice(0, -1)],
  ["half the file", (text: string) => text.slice(0, text.length / 2)],
  ["other line ends", (text: string) => text.replaceAll("\n", "\r\n")],
  ["an empty file", () => ""],
  [
    "two lines in another order",
    (text: string) =>
      text.replace('<meta charset="utf-8">\n<meta name="viewport"', '<meta name="viewport"\n<meta charset="utf-8">'),
  ],
  ["the digest in capitals", (text: string) => text.replace(good.digest, good.digest.toUpperCase())],
])("finds %s", async (_, change) => {
  expect((await verified(bytesOf(change(good.html)))).ok).toBe(false);
});

it("refuses a wrong number under a right digest", async () => {
  const lie = JSON.parse(JSON.stringify(smallCopy()).replaceAll("-0.17", "-0.16")) as EmbeddedCopy;
  const verification = await verified(bytesOf((await copyFromEmbedded(lie, smallResult(), looks, digest)).html));
  expect(verification.ok).toBe(false);
  expect(verification.problems.map((problem) => problem.code)).toContain("different");
  expect(verification.problems[0]?.sentence).toMatch(/-0\.16 in the copy and -0\.17/);
});

it("refuses a page that shows something else than its data, under a right digest", async () => {
  const shown = good.html
    .replace("<p>Thickness falls with stiffness", "<p>Thickness rises with stiffness")
    .replace(good.digest, "0".repeat(64));
  const stated = shown.replace("0".repeat(64), await digest(bytesOf(shown)));
  const verification = await verified(bytesOf(stated));
  expect(verification.problems.map((problem) => problem.code)).toEqual(["differs-from-rebuilt"]);
  expect(verification.problems[0]?.facts.line).toBe(
    1 + good.html.split("\n").findIndex((line) => line.includes("<p>Thickness falls")),
  );
});

it("refuses an outline that is not that of its text, under a right digest", async () => {
  const copy = smallCopy();
  const lie = { ...copy, outline: { ...copy.outline, end: 5 } };
  const verification = await verified(bytesOf((await copyFromEmbedded(lie, smallResult(), looks, digest)).html));
  expect(verification.problems).toMatchObject([{ code: "different", facts: { what: "outline.end", stated: "5" } }]);
});

it("says when another version made it, and then compares the numbers only", async () => {
  const verification = await verifyCopy(bytesOf(good.html), { digest, compute, rebuild, version: "0.2.0" });
  expect(verification).toMatchObject({
    ok: true,
    notes: [{ code: "other-version", facts: { made: "0.1.0", here: "0.2.0" } }],
  });
});

it("says so, and does not fall over, when the numbers cannot be computed again", async () => {
  const verification = await verifyCopy(bytesOf(good.html), {
    digest,
    compute: () => Promise.reject(new Error("no such table")),
  });
  expect(verification.problems.map((problem) => problem.code)).toEqual(["cannot-recompute"]);
});

it("reads the data of a copy back as they were", () => {
  expect(copyFromBytes(bytesOf(good.html)).copy).toEqual(smallCopy());
});

it("names the place where embedded data are not as they should be", async () => {
  const odd = { ...smallCopy(), date: "14 March" };
  expect(
    copyFromBytes(bytesOf((await copyFromEmbedded(odd, smallResult(), looks, digest)).html)).problems,
  ).toMatchObject([{ code: "bad-content", facts: { where: "/date" } }]);
});
