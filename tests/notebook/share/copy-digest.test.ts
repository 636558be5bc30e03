import { expect, it } from "vitest";
import { copyDigest, DIGEST_MARK } from "../../../src/notebook/share/copy-digest.ts";

it("blanks the digest in a copy of the bytes and leaves the file's own as they were, a Node buffer too", () => {
  const file = Buffer.from(`<!doctype html>\n${DIGEST_MARK}${"ab".repeat(32)}">\n`);
  const before = Uint8Array.from(file);
  const found = copyDigest(file);
  expect(found?.stated).toBe("ab".repeat(32));
  expect(new TextDecoder().decode(found?.blanked)).toContain("0".repeat(64));
  expect(Uint8Array.from(file)).toEqual(before);
});
