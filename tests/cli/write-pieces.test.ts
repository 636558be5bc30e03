import { Writable } from "node:stream";
import { expect, it } from "vitest";
import { writePieces } from "../../src/cli/write-pieces.ts";

const piece = "x".repeat(10_000);

it("writes no faster than it is read, and everything in order", async () => {
  const written: string[] = [];
  const slow = new Writable({
    highWaterMark: 1,
    write: (chunk: Buffer, _, done) => {
      written.push(String(chunk));
      setImmediate(done);
    },
  });
  let most = 0;
  function* pieces() {
    for (let at = 0; at < 100; at++) {
      most = Math.max(most, slow.writableLength);
      yield `${at}${piece}`;
    }
  }
  await writePieces(pieces(), slow);
  await new Promise((done) => slow.end(done));
  expect(written.join("")).toBe(Array.from({ length: 100 }, (_, at) => `${at}${piece}`).join(""));
  expect(most).toBeLessThan(100_000);
});

it("stops where nobody reads any more", async () => {
  const gone = new Writable({ highWaterMark: 1, write: () => gone.destroy() });
  let taken = 0;
  function* pieces() {
    for (; taken < 1000; taken++) yield piece;
  }
  await writePieces(pieces(), gone);
  expect(taken).toBeLessThan(50);
});
