// Text that would be a property, markup, a change of direction or a formula elsewhere, in every place a record table has: it is only text.
import { parseHTML } from "linkedom";
import { expect, it } from "vitest";
import { staticView } from "../../src/app/static-view.tsx";
import { recomputed } from "../../src/cli/sharing-tools.ts";
import { createNotebookEngine } from "../../src/notebook/engine/index.ts";
import { copyFromEmbedded } from "../../src/notebook/share/copy-from-embedded.ts";
import { copyLooks, datedCopy } from "../../src/notebook/share/dated-copy.ts";
import { verifyCopy } from "../../src/notebook/share/verify-copy.ts";
import { digest, document, looks } from "../notebook/share/small-copy.ts";

const SCRIPT = "<script>alert(1)</script>";
const BIDI = "\u202Eleft\u202C\u2066\u200F";
const MARKS = /[\u200f\u202a-\u202e\u2066-\u2069]/;
const texts: readonly string[] = ["__proto__", "constructor", "toString", SCRIPT, BIDI, "=1+1"];

const thicknesses = Array.from({ length: 36 }, (_, i) =>
  Number((2.9 - (i % 7) * 0.06 + ((i * 5) % 11) * 0.01).toFixed(3)),
);
const quoted = (text: string) => `"${text}"`;
const records = [
  ["Top", "Species", "Stiffness (GPa)", "Thickness (mm)", ...texts, "Notes"],
  ...Array.from({ length: 36 }, (_, i) => {
    const text = texts[i % 6] as string;
    const turn = Math.floor(i / 6);
    return [
      turn === 0 ? text : `${text} ${turn}`,
      text,
      (8 + (i % 7) * 0.5 + turn * 0.1).toFixed(2),
      String(thicknesses[i]),
      ...texts.map((_, at) => texts[(i + at) % 6] as string),
      `It rings like ${text}, bright`,
    ];
  }),
]
  .map((row) => row.map(quoted).join(","))
  .join("\n");

const notebookText = `---
title: Tops ${SCRIPT} ${BIDI}
__proto__: { polluted: 1 }
constructor: { prototype: { polluted: 1 } }
---
Prose with ${SCRIPT} and ${BIDI} and __proto__.

\`\`\`records tops
from records/tops.csv
piece is top
leave out piece constructor because "${SCRIPT}"
\`\`\`

\`\`\`columns tops
constructor_2 = thickness * 2 in mm
\`\`\`

\`\`\`question stiffer
thickness against stiffness, allowing for species
\`\`\`

\`\`\`question woods
thickness across species
\`\`\`

\`\`\`question formula
thickness against constructor_2
\`\`\`

\`\`\`picture both
thickness against stiffness, by species
\`\`\`
`;

const file = new TextEncoder().encode(records);
async function computed(text = notebookText) {
  const engine = createNotebookEngine({
    readFile: async (path) => (path === "records/tops.csv" ? file : null),
    schedule: setImmediate,
    asOf: "2026-03-14",
    version: "0.1.0",
  });
  engine.update(text, "tops.md");
  await engine.settled();
  const made = { result: engine.result(), tables: engine.tables() };
  engine.dispose();
  return made;
}
/** The notebook above, computed once for the tests that only read it. */
let read: ReturnType<typeof computed> | undefined;
const whole = () => {
  read ??= computed();
  return read;
};
const kinds = ({ result }: Awaited<ReturnType<typeof computed>>) =>
  result.entries.map(({ name, view, problems }) => [
    name,
    view.kind === "answer" ? view.finding.kind : view.kind,
    problems.map(({ sentence }) => sentence),
  ]);
const clean = () => {
  expect(({} as { polluted?: unknown }).polluted).toBeUndefined();
  expect(Object.keys(Object.prototype)).toEqual([]);
  expect(typeof {}.toString).toBe("function");
};

it("answers over records whose headers, ids, labels and notes are such text", async () => {
  const made = await whole();
  expect(made.result.problems).toEqual([]);
  expect(kinds(made)).toEqual([
    ["tops", "table", []],
    ["tops", "table", []],
    ["stiffer", "relation", []],
    ["woods", "comparison", []],
    ["formula", "refused", []],
    ["both", "picture", []],
  ]);
  clean();
});

it("keeps each header as it stands, less its marks, and names its column plainly", async () => {
  const { tables } = await whole();
  const columns = tables.get("tops")?.columns ?? new Map<string, never>();
  const named = [...columns.values()].map(({ name, header }) => [name, header]);
  expect(named.slice(4, 10)).toEqual([
    ["proto", "__proto__"],
    ["constructor", "constructor"],
    ["tostring", "toString"],
    ["script_alert_1_script", SCRIPT],
    ["left", "left"],
    ["1_1", "=1+1"],
  ]);
  expect(columns.get("__proto__")).toBeUndefined();
});

it("counts each label as a group of its own, with the mean of its records", async () => {
  const { result } = await whole();
  const view = result.entries.find(({ name }) => name === "woods")?.view;
  const sentence = view?.kind === "answer" ? view.finding.sentence : "";
  for (const [at, text] of texts.entries()) {
    const group = thicknesses.filter(
      (_, i) => i % 6 === at && records.split("\n")[i + 1]?.startsWith('"constructor",') !== true,
    );
    const mean = group.reduce((sum, value) => sum + value, 0) / group.length;
    expect(sentence).toContain(
      `${text === BIDI ? "left" : text} ${mean.toFixed(3)} mm (${text === "constructor" ? 5 : 6})`,
    );
  }
  expect(sentence).not.toMatch(MARKS);
});

it("asks across columns of such names, and finds none where only an object has the property", async () => {
  const ask = (column: string) =>
    `\`\`\`records tops\nfrom records/tops.csv\npiece is top\n\`\`\`\n\n\`\`\`question asked\nthickness across ${column}\n\`\`\`\n`;
  for (const column of ["proto", "constructor", "tostring", "script_alert_1_script"])
    expect([column, kinds(await computed(ask(column)))[1]]).toEqual([column, ["asked", "comparison", []]]);
  for (const column of ["__proto__", "hasownproperty", "valueof", "prototype"]) {
    const { result } = await computed(ask(column));
    expect([column, result.problems.length > 0]).toEqual([column, true]);
  }
  clean();
});

it.each(["constructor", "toString", "__proto__", "hasOwnProperty"])(
  "computes with an entry that is named %s",
  async (name) => {
    const block = (head: string, body: string) => `\`\`\`${head}\n${body}\n\`\`\`\n\n`;
    const made = await computed(
      block(`records ${name}`, "from records/tops.csv\npiece is top") +
        block(`dial d_${name}`, "1 mm from 0 mm to 4 mm") +
        block("value valueOf", `2 * d_${name}   in mm`) +
        block("question isPrototypeOf", "thickness against stiffness"),
    );
    expect(kinds(made)).toEqual([
      [name, "table", []],
      [`d_${name}`, "slider", []],
      ["valueOf", "amount", []],
      ["isPrototypeOf", "relation", []],
    ]);
    const other = await computed(
      block(`dial ${name}`, "1 mm from 0 mm to 4 mm") + block("value twice", `2 * ${name}   in mm`),
    );
    expect(kinds(other)).toEqual([
      [name, "slider", []],
      ["twice", "amount", []],
    ]);
    clean();
  },
);

const looksOfCopy = {
  readerScripts: looks.readerScripts,
  readerStyle: looks.readerStyle,
  renderView: staticView,
};
const made = async () =>
  datedCopy({
    ...(await whole()),
    ...looksOfCopy,
    notebookText,
    date: "2026-03-14",
    version: "0.1.0",
    document,
    without: [],
    digest,
    compute: recomputed("0.1.0"),
  });

/** Made once: the tests below only read it. */
let once: ReturnType<typeof made> | undefined;
const shared = () => {
  once ??= made();
  return once;
};

it("writes it into a dated copy as text alone", async () => {
  const { copy, problems } = await shared();
  expect(problems).toEqual([]);
  const html = copy?.html ?? "";
  expect(html).not.toMatch(/<script>alert/i);
  expect(html).toContain("&lt;script&gt;alert(1)&lt;/script&gt;");
  const page = parseHTML(html).document;
  expect([...page.querySelectorAll("script")].map((script) => script.getAttribute("type"))).toEqual([
    "application/json",
    "module",
  ]);
  expect([...page.querySelectorAll("script")].map(({ textContent }) => textContent).join()).not.toContain("<script");
  const on = [...page.querySelectorAll("*")].flatMap((element) =>
    element.getAttributeNames().filter((name) => name.startsWith("on")),
  );
  expect(on).toEqual([]);
  clean();
});

it("lets a change of direction out of a record reach no further than its own cell", async () => {
  const html = (await shared()).copy?.html ?? "";
  const main = html.slice(html.indexOf("<table"), html.indexOf('<script type="application/json"'));
  expect(main).toMatch(MARKS);
  expect(main.replace(/<bdi[^>]*>[^<]*<\/bdi>/g, "")).not.toMatch(MARKS);
});

it("verifies such a copy from its own bytes, and finds each raw text again in it", async () => {
  const { copy } = await shared();
  const raw = copy?.embedded.tables[0]?.cells.flatMap(({ cells }) =>
    cells.map((cell) => (cell === null ? null : "raw" in cell ? cell.raw : cell[1])),
  );
  for (const text of texts) expect(raw).toContain(text);
  const verified = await verifyCopy(new TextEncoder().encode(copy?.html), {
    digest,
    compute: recomputed("0.1.0"),
    version: "0.1.0",
    rebuild: async (embedded, result) =>
      (await copyFromEmbedded(embedded, result, copyLooks({ ...looksOfCopy, document }), digest)).html,
  });
  expect(verified.problems).toEqual([]);
  expect(verified.ok).toBe(true);
  clean();
});
