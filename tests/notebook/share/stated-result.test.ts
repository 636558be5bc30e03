import { expect, it } from "vitest";
import { statedResult } from "../../../src/notebook/share/stated-result.ts";
import { smallResult } from "./small-copy.ts";

it("states each number once: no view, no picture, no trace, no prose a second time", () => {
  const [entry] = statedResult(smallResult()).entries;
  expect(entry).toMatchObject({ name: "question-1 ", finding: { estimate: [{ value: -0.17, low: -0.3 }] } });
  expect(JSON.stringify(statedResult(smallResult()))).not.toMatch(/"(view|picture|trace|parts)":/);
});
