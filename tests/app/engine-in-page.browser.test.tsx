// The engine in the browser and the engine in Node: one notebook, one result, to the last bit of every number.
import { expect, inject, it } from "vitest";
import { demoFindings } from "../support/demo-findings.ts";

const addresses = import.meta.glob<string>("../../notebooks/**/*.{md,csv,json}", {
  query: "?url",
  import: "default",
  eager: true,
});

async function read(path: string): Promise<Uint8Array | null> {
  const address = addresses[`../../notebooks/${path}`];
  if (address === undefined) return null;
  const answer = await fetch(address);
  expect(answer.ok, address).toBe(true);
  return new Uint8Array(await answer.arrayBuffer());
}

/** Where two lines part, with a little of each: a whole line is too long to read. */
function parting(here: string, there: string): string | null {
  if (here === there) return null;
  let at = 0;
  while (here[at] === there[at]) at++;
  const around = (text: string) => text.slice(Math.max(0, at - 120), at + 60);
  return `browser: ${around(here)}\nNode: ${around(there)}`;
}

it("computes the demo notebook in the browser as in Node, byte for byte", async () => {
  const inNode = inject("demoInNode").split("\n");
  const here = (await demoFindings(read)).split("\n");
  expect(inNode.filter((line) => line.includes('"finding"')).length).toBeGreaterThan(6);
  expect(inNode.map((line, at) => parting(here[at] ?? "", line)).filter((each) => each !== null)).toEqual([]);
  expect(here).toHaveLength(inNode.length);
});
