import { expect, it } from "vitest";
import { notebookOutline } from "../../../src/notebook/language/index.ts";
import { engineOfCopy } from "../../../src/notebook/share/engine-of-copy.ts";
import { smallCopy } from "./small-copy.ts";

const text = `---
title: Small
---
\`\`\`records tops
from records/tops.csv
join records/instruments.csv on top
\`\`\`

\`\`\`dial target
9 mm from 5 mm to 15 mm
\`\`\`

\`\`\`value twice
2 * target in mm
\`\`\`
`;
const { frontMatter: _frontMatter, ...outline } = notebookOutline(text, "small.md");
const copy = { ...smallCopy(), notebookText: text, outline, dials: [{ name: "target", value: 0.007 }] };
const twice = (engine: ReturnType<typeof engineOfCopy>) =>
  engine.result().entries.find((entry) => entry.name === "twice")?.value?.value;

it("answers from the copy alone, with the dials as they stood and as they are turned", async () => {
  const engine = engineOfCopy(JSON.parse(JSON.stringify(copy)));
  await engine.settled();
  expect(engine.result().problems).toEqual([]);
  expect(engine.result().title).toBe("Small");
  expect(engine.tables().get("tops")?.columns.get("thickness")?.kind).toBe("quantity");
  expect(twice(engine)).toBe(14);
  engine.setDial("target", 0.012);
  await engine.settled();
  expect(twice(engine)).toBe(24);
  engine.dispose();
});
