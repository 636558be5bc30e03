// From the bytes of a file to the answer: a formula that rests on the measurement on the other axis.
import { expect, it } from "vitest";
import { shopEngine } from "./small-shop.ts";

const masses = Array.from({ length: 24 }, (_, i) => 180 + 25 * Math.sin(2.3 * i + 1));
const csv = [
  "board,mass (g),volume (cm3)",
  ...masses.map((mass, i) => `B-${i + 1},${mass.toFixed(1)} ± 0.1,${(430 + 12 * Math.sin(5.1 * i)).toFixed(1)} ± 2`),
].join("\n");
const notebook = `\`\`\`records tops
from records/tops.csv
piece is board
\`\`\`

\`\`\`columns tops
density = mass / volume in kg/m3
\`\`\`

\`\`\`question slope
density against mass
\`\`\`
`;

it("says that arithmetic gives as much, how much, and that it was drawn with a seed", async () => {
  const engine = await shopEngine(notebook, { "records/tops.csv": csv });
  const { entries, problems } = engine.result();
  expect(problems.map(({ sentence }) => sentence)).toEqual([]);
  const found = entries.find(({ name }) => name === "slope")?.finding;
  if (found?.kind !== "relation") throw new Error(found?.kind);
  expect(found.sentence).toMatch(/As much comes of arithmetic alone: mass is in both\.$/);
  expect(found.cautions.map(({ code }) => code)).toEqual(expect.arrayContaining(["shared-ancestor", "shared-error"]));
  expect(found.seed).toBeTypeOf("number");
});
