// Entries that lean on each other: corrections by a rig, columns of another notebook, settings, names taken twice.
import { expect, it } from "vitest";
import { closeTo } from "../../support/close-to.ts";
import { shopEngine, shopFiles, shopNotebook } from "./small-shop.ts";

const massOf = async (text: string) => {
  const mass = (await shopEngine(text)).tables().get("tops")?.columns.get("mass");
  return mass?.kind === "quantity" ? mass : undefined;
};

it("takes the bias of the balance off the masses, and carries its uncertainty on", async () => {
  const plain = await massOf(shopNotebook);
  const corrected = await massOf(
    shopNotebook.replace("finished on finished_on", "finished on finished_on\ncorrect mass by balance"),
  );
  // The balance of the invented file reads between 0.2 g and 0.35 g heavy in each of its nine checks.
  const off = (plain?.values[0] ?? 0) - (corrected?.values[0] ?? 0);
  expect(off).toBeGreaterThan(0.0002);
  expect(off).toBeLessThan(0.00035);
  expect(corrected?.uncertainty?.[0]).toBeGreaterThan(0);
});

it("places a correction by a rig that is not there", async () => {
  const text = shopNotebook.replace("finished on finished_on", "finished on finished_on\ncorrect mass by scales");
  const engine = await shopEngine(text);
  const line = text.split("\n").findIndex((each) => each.startsWith("correct")) + 1;
  expect(engine.result().problems).toEqual([
    expect.objectContaining({ code: "unknown-name", line, column: 17, length: 6 }),
  ]);
  expect(engine.result().entries.find((each) => each.name === "slope")?.finding?.kind).toBe("relation");
});

it("uses columns of another notebook", async () => {
  const engine = await shopEngine(
    "```use lab\nratio, species from shop.lab.md\n```\n\n```question\nratio across species\n```\n",
    { ...shopFiles, "shop.lab.md": shopNotebook },
  );
  expect(engine.result().problems).toEqual([]);
  expect(engine.result().entries.at(-1)?.finding?.kind).toBe("comparison");
});

it("says that two notebooks which use each other go round in a ring, and ends", async () => {
  const other = "```use back\nratio from shop.md\n```\n";
  const engine = await shopEngine("```use there\nratio from other.md\n```\n", { ...shopFiles, "other.md": other });
  expect(engine.result().problems.length).toBe(1);
});

it("reads a setting, and places a dial that is not there", async () => {
  const engine = await shopEngine(`${shopNotebook}\n\`\`\`setting as-planed\nlimit 2 mm\nlimmit 3 mm\n\`\`\`\n`);
  expect(engine.result().problems).toEqual([expect.objectContaining({ code: "unknown-name", suggestion: "limit" })]);
});

it("asks which table is meant when two have the columns", async () => {
  const engine = await shopEngine(
    `${shopNotebook}\n\`\`\`records more\nfrom records/tops.csv\n\`\`\`\n\n\`\`\`question either\nmass across species\n\`\`\`\n\n\`\`\`question of-one\nmass across species of more\n\`\`\`\n`,
  );
  const codes = (name: string) =>
    engine
      .result()
      .entries.find((each) => each.name === name)
      ?.problems.map((each) => each.code);
  expect([codes("either"), codes("of-one")]).toEqual([["several-tables"], []]);
});

it("hears the first of two values with one name, and says so at the second", async () => {
  const engine = await shopEngine("```value a\n1 mm\n```\n\n```value a\n2 mm\n```\n\n```value twice\na * 2\n```\n");
  expect(engine.result().problems).toEqual([expect.objectContaining({ code: "name-taken", line: 5 })]);
  closeTo(engine.result().entries.at(-1)?.value?.value ?? 0, 2, 1e-12);
});

it("turns a dial that is a bare number, and a setting of it", async () => {
  const engine = await shopEngine(
    "```dial scale\n2 from 1 to 10\n```\n\n```value twice\n2 * scale\n```\n\n```setting more\nscale 5\n```\n",
  );
  expect(engine.result().problems).toEqual([]);
  engine.setDial("scale", 7);
  await engine.settled();
  expect(engine.result().entries.find((each) => each.name === "twice")?.value?.value).toBe(14);
  engine.dispose();
});
