// The routes of an import over a real folder: read, bring in, remember, begin a notebook.
import { existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, expect, it } from "vitest";
import type { ImportReading } from "../../src/core/records/index.ts";
import { routeTable } from "../../src/server/routes/route-table.ts";
import { openWorkspace } from "../../src/server/workspace/open-workspace.ts";

const made: { readonly home: string; readonly close: () => Promise<void> }[] = [];
afterEach(async () => {
  for (const { home, close } of made.splice(0)) {
    await close();
    rmSync(home, { recursive: true, force: true });
  }
});

type Answer = { readonly status: number; readonly body: never };
function shop(there: Record<string, string> = {}) {
  const home = mkdtempSync(join(tmpdir(), "import-"));
  mkdirSync(join(home, "records"));
  for (const [name, text] of Object.entries(there)) writeFileSync(join(home, name), text);
  const workspace = openWorkspace(home, {
    version: "0",
    draw: () => ({ name: "svg", attributes: [], children: [] }) as never,
    share: async () => ({ problems: [] }),
    watch: false,
  } as never);
  made.push({ home, close: workspace.close });
  const ask = async (key: string, body?: unknown): Promise<Answer> => {
    const [method = "", path = ""] = key.split(" ");
    const route = routeTable[key] ?? routeTable[`GET ${path.replace(/\/[^/]+$/, "/:name")}`];
    const answer = await route!(
      new Request(`http://127.0.0.1${path}`, {
        method,
        ...(body === undefined ? {} : { body: JSON.stringify(body), headers: { "content-type": "application/json" } }),
      }),
      workspace,
    );
    return { status: answer.status, body: (await answer.json()) as never };
  };
  const text = (name: string) => readFileSync(join(home, name), "utf8");
  return { home, ask, text };
}
const base64 = (text: string) => Buffer.from(text).toString("base64");
const sent = (name: string, text: string, more: Record<string, unknown> = {}) => ({
  name,
  base64: base64(text),
  options: null,
  about: null,
  ...more,
});
const unclear = 'Piece,Wood,Mass (g)\nA,cedar,"1,234"\nB,cedar,"2,310"\nC,spruce,"1,400"\nD,spruce,"1,500"\n';
const read = async (ask: ReturnType<typeof shop>["ask"], body: unknown) =>
  (await ask("POST /api/import/read", body)).body as ImportReading;
const codesOf = ({ body }: Answer) => (body as { problems: { code: string }[] }).problems.map(({ code }) => code);

it("reads without writing, and asks what the file leaves open", async () => {
  const { home, ask } = shop();
  const reading = await read(ask, sent("tops.csv", unclear));
  expect(reading.questions.map(({ id }) => id)).toEqual(["decimal"]);
  expect(reading.tables[0]?.rows[0]?.cells[2]).toMatchObject({ raw: "1,234", reading: "not readable" });
  expect(readdirSync(join(home, "records"))).toEqual([]);
});

it("shows what is no record with its text, however the lines end", async () => {
  const text = `Tops of spring;;\r\n"two\nlines";;\r\n${unclear.replaceAll(",", ";").replaceAll("\n", "\r\n")}\r\nMean;;"1;7"\r\n`;
  for (const [head, shift] of [
    ["", 0],
    ["sep=;\r\n", 1],
  ] as const) {
    const { setAside } = await read(shop().ask, sent("tops.csv", head + text.replaceAll(/"1;(\d+)"/g, "1.$1")));
    const shown = setAside.map(({ place, raw }) => [place, raw]);
    expect(shown.slice(-3)).toEqual([
      [`record ${1 + shift}`, "Tops of spring;;"],
      [`record ${2 + shift}`, '"two\nlines";;'],
      [`record ${9 + shift}`, "Mean;;1.7"],
    ]);
    if (shift === 1) expect(shown[0]).toEqual(["record 1", "sep=;"]);
  }
});

it("reads with the answers that are given", async () => {
  const reading = await read(shop().ask, sent("tops.csv", unclear, { options: { decimal: "," } }));
  expect([reading.questions, reading.warningCount]).toEqual([[], 0]);
  expect(reading.tables[0]?.rows[0]?.cells[2]).toEqual({ raw: "1,234", reading: "1.234 g" });
});

it("brings the bytes in as they are, and remembers the answers beside them", async () => {
  const { ask, text } = shop();
  const odd = `\ufeff${unclear.replaceAll("\n", "\r\n")}`;
  const answer = await ask("POST /api/import", sent("tops.csv", odd, { options: { decimal: "," } }));
  expect(answer).toMatchObject({ status: 200, body: { file: "records/tops.csv", tables: ["tops"] } });
  expect(text("records/tops.csv")).toBe(odd);
  expect(JSON.parse(text("records/tops.about.json"))).toMatchObject({ read: { decimal: "," } });
});

it("reads next month's file of the same name, and of the same shape under another name, without a question", async () => {
  const { ask, text } = shop();
  await ask("POST /api/import", sent("tops-april.csv", unclear, { options: { decimal: "," } }));
  const may = unclear.replaceAll("1,", "3,");
  for (const name of ["tops-april.csv", "tops-may.csv"]) {
    const reading = await read(ask, sent(name, may));
    expect([reading.questions, reading.remembered]).toEqual([[], "records/tops-april.about.json"]);
    expect(reading.tables[0]?.rows[0]?.cells[2]?.reading).toBe("3.234 g");
  }
  await ask("POST /api/import", sent("tops-may.csv", may));
  expect(JSON.parse(text("records/tops-may.about.json"))).toMatchObject({ read: { decimal: "," } });
});

it("remembers what the maker said of the columns too, for the file of the same shape", async () => {
  const about = '{ "columns": {"Piece": {}, "Wood": {}, "Mass": {"uncertainty": "0.2 g"}}, "read": {"decimal": "."} }';
  const { ask, text } = shop({ "records/old.about.json": about });
  await ask("POST /api/import", sent("new.csv", unclear));
  expect(text("records/new.about.json")).toBe(about);
});

it("asks of a file of another shape", async () => {
  const { ask } = shop();
  await ask("POST /api/import", sent("tops.csv", unclear, { options: { decimal: "," } }));
  const reading = await read(ask, sent("backs.csv", unclear.replace("Wood", "Tree")));
  expect(reading.questions.map(({ id }) => id)).toEqual(["decimal"]);
});

it.each([
  ["yes", 0, [{ name: "thickness", columns: ["Thickness 1", "Thickness 2", "Thickness 3"] }]],
  ["no", 1, []],
])("asks once whether columns are readings of one thing, and remembers a %s", async (_, place, repeats) => {
  const rows = [1, 2, 3, 4].map((i) => `P${i},2.${i},2.${i + 1},2.${i}`).join("\n");
  const text = `Piece,Thickness 1 (mm),Thickness 2 (mm),Thickness 3 (mm)\n${rows}\n`;
  const { ask, text: textOf } = shop();
  const { questions } = await read(ask, sent("tops.csv", text));
  expect(questions.map(({ id }) => id)).toEqual(["readings-in-columns"]);
  const { about } = questions[0]!.choices[place]!.answers;
  expect((await ask("POST /api/import", sent("tops.csv", text, { options: {}, about }))).status).toBe(200);
  expect(JSON.parse(textOf("records/tops.about.json"))).toMatchObject({ repeats });
  expect((await read(ask, sent("tops.csv", text))).questions).toEqual([]);
});

it("writes over a table only when told to, and keeps the old one", async () => {
  const { ask, text, home } = shop({ "records/tops.csv": "Piece,Mass (g)\nZ,1\n" });
  expect((await read(ask, sent("tops.csv", unclear))).exists).toBe(true);
  const refused = await ask("POST /api/import", sent("tops.csv", unclear));
  expect([refused.status, codesOf(refused)]).toEqual([409, ["table-exists"]]);
  expect(text("records/tops.csv")).toBe("Piece,Mass (g)\nZ,1\n");
  expect((await ask("POST /api/import", sent("tops.csv", unclear, { replace: true }))).status).toBe(200);
  expect(text("records/tops.csv")).toBe(unclear);
  expect(readdirSync(join(home, "records")).some((name) => name.endsWith(".kept"))).toBe(true);
});

it("does not write over a description that it does not understand", async () => {
  const { ask, text, home } = shop({ "records/tops.about.json": '{"version": 9}' });
  const refused = await ask("POST /api/import", sent("tops.csv", unclear));
  expect([refused.status, codesOf(refused)]).toEqual([422, ["description-not-understood"]]);
  expect(text("records/tops.about.json")).toBe('{"version": 9}');
  expect(existsSync(join(home, "records/tops.csv"))).toBe(false);
});

it("says why a file without a table cannot be brought in", async () => {
  const refused = await shop().ask("POST /api/import", sent("tops.csv", "%PDF-1.4\n\u0000\u0001"));
  expect([refused.status, codesOf(refused)]).toEqual([422, ["not-a-table"]]);
});

it.each(["tops.exe", "con.csv", ".csv", "tops.about.json", "a:b.csv", "tops.csv ", "a\\b.csv"])(
  "takes no table called %j",
  async (name) => {
    const { ask, home } = shop();
    const refused = await ask("POST /api/import", sent(name, unclear));
    expect([refused.status, codesOf(refused)]).toEqual([422, ["table-name-refused"]]);
    expect(readdirSync(join(home, "records"))).toEqual([]);
  },
);

it.each([
  ["a name with a slash", { name: "../tops.csv" }],
  ["no base64", { base64: "a*b" }],
  ["half of a base64", { base64: "abcde" }],
  ["an option that is none", { options: { decimal: ";" } }],
  ["another key of the description", { about: { title: "x" } }],
  ["a key too many", { more: 1 }],
])("refuses %s", async (_, more) => {
  const refused = await shop().ask("POST /api/import/read", sent("tops.csv", unclear, more));
  expect([refused.status, codesOf(refused)]).toEqual([422, ["wrong-shape"]]);
});

it("begins a notebook that answers, and never writes over one", async () => {
  const { ask, text } = shop();
  const taken = await ask("POST /api/import", sent("tops.csv", unclear, { options: { decimal: "," } }));
  const { suggestion } = taken.body as { suggestion: { file: string; text: string } };
  expect(suggestion.file).toBe("tops.md");
  const begun = await ask("POST /api/notebook", { name: suggestion.file, text: suggestion.text });
  expect(begun).toMatchObject({ status: 201, body: { file: "tops.md", result: { problems: [] } } });
  expect(text("tops.md")).toBe(suggestion.text);
  const again = await ask("POST /api/notebook", { name: "tops.md", text: "other" });
  expect([again.status, codesOf(again)]).toEqual([409, ["notebook-exists"]]);
  expect(text("tops.md")).toBe(suggestion.text);
});

it.each(["tops.txt", "sub/tops.md", "README.md", ".md", "../tops.md"])("begins no notebook called %j", async (name) => {
  const refused = await shop().ask("POST /api/notebook", { name, text: "x" });
  expect([refused.status, codesOf(refused)]).toEqual([422, ["notebook-name-refused"]]);
});

it("suggests a notebook for a table that lies in the folder, under a name that is free", async () => {
  const { ask } = shop({ "records/tops.csv": unclear, "tops.md": "mine" });
  const { body } = await ask(`GET /api/first-notebook/${encodeURIComponent("records/tops.csv")}`);
  expect(body).toMatchObject({ file: "tops-2.md", entry: "```records tops\nfrom records/tops.csv\n```\n" });
});
