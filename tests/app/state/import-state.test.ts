import { expect, it } from "vitest";
import type { ImportApi, ImportFile } from "../../../src/app/state/import-api.ts";
import { importState } from "../../../src/app/state/import-state.ts";
import { withRecordsEntry } from "../../../src/app/state/with-records-entry.ts";
import type { ImportQuestion, ImportReading } from "../../../src/core/records/index.ts";
import { samplePage } from "../../support/sample-page.ts";

const decimal: ImportQuestion = {
  id: "decimal",
  code: "ambiguous-number",
  sentence: "Which mark is decimal?",
  columns: ["Mass"],
  choices: [
    { label: "The comma", answers: { read: { decimal: "," } } },
    { label: "The point", answers: { read: { decimal: "." } } },
  ],
};
const readingOf = ({ name, answers }: ImportFile, more: Partial<ImportReading> = {}): ImportReading => ({
  file: `records/${name}`,
  answers: answers ?? { read: {}, about: {} },
  remembered: null,
  tables: [],
  tableCount: 1,
  setAside: [],
  setAsideCount: 0,
  warnings: [],
  warningCount: answers?.read.decimal === undefined ? 2 : 0,
  questions: answers?.read.decimal === undefined ? [decimal] : [],
  exists: false,
  ...more,
});
const suggestion = { file: "tops.md", text: "# Tops", entry: "```records tops\nfrom records/tops.csv\n```\n" };

function opened(own: Partial<ImportApi> = {}) {
  const [read, taken]: [ImportFile[], (ImportFile & { replace: boolean })[]] = [[], []];
  const api: ImportApi = {
    read: async (file) => {
      read.push(file);
      return { ok: true, value: readingOf(file) };
    },
    take: async (file, replace) => {
      taken.push({ ...file, replace });
      return { ok: true, value: { file: `records/${file.name}`, tables: ["tops"], suggestion } };
    },
    suggest: async () => ({ ok: true, value: suggestion }),
    begin: async (file) => ({ ok: true, value: { ...samplePage(), file } }),
    open: async () => ({ ok: true, value: samplePage() }),
    save: async (file, text) => ({ ok: true, value: { ...samplePage(), file, text } }),
    ...own,
  };
  return { read, taken, state: importState(api, async () => BYTES) };
}
const BYTES = new Blob(["UGllY2U="]);
const tops = { name: "tops.csv", size: 10 };

it("reads what was chosen with what is remembered, and says how many warnings and questions there are", async () => {
  const { state, read } = opened();
  await state.choose(tops);
  expect(read).toEqual([{ name: "tops.csv", base64: BYTES, answers: null }]);
  expect(state.message.value).toBe("Read: 2 warnings, 1 question open.");
  expect(state.unsaved.value).toBe(true);
});

it("reads again with each answer, keeps the question to be seen, and lets it be answered otherwise", async () => {
  const { state, read } = opened();
  await state.choose(tops);
  await state.answer("decimal", 0);
  expect(read.at(-1)?.answers?.read).toEqual({ decimal: "," });
  expect(state.message.value).toBe("Read again: 0 warnings left.");
  expect(state.questions.value).toEqual([{ question: decimal, chosen: 0 }]);
  await state.answer("decimal", 1);
  expect(read.at(-1)?.answers?.read).toEqual({ decimal: "." });
  expect(state.questions.value).toEqual([{ question: decimal, chosen: 1 }]);
});

it("says whose answers were remembered until they are asked again", async () => {
  const about = "records/april.about.json";
  const { state, read } = opened({
    read: async (file) => {
      read.push(file);
      const answers = file.answers ?? { read: { decimal: ",", delimiter: ";" }, about: { repeats: [] } };
      const remembered = file.answers === null ? about : null;
      return { ok: true, value: readingOf({ ...file, answers }, { remembered }) };
    },
  });
  await state.choose(tops);
  await state.rename("may.csv");
  expect([state.remembered.value, state.questions.value]).toEqual([about, []]);
  await state.askAgain();
  expect(read.at(-1)?.answers).toEqual({ read: { delimiter: ";" }, about: {} });
  expect(state.remembered.value).toBeNull();
  expect(state.questions.value).toEqual([{ question: decimal, chosen: null }]);
});

it("shows the reading that was asked for last, whichever answer comes last", async () => {
  const waiting: (() => void)[] = [];
  const { state } = opened({
    read: (file) => {
      const answer = { ok: true, value: readingOf(file) } as const;
      return file.answers === null
        ? Promise.resolve(answer)
        : new Promise((come) => void waiting.push(() => come(answer)));
    },
  });
  await state.choose(tops);
  const both = [state.answer("decimal", 0), state.answer("decimal", 1)];
  for (const come of waiting.reverse()) come();
  await Promise.all(both);
  expect(state.reading.value?.answers.read.decimal).toBe(".");
});

it("keeps what was chosen and answered when the server refuses", async () => {
  const { state } = opened({
    take: async () => ({ ok: false, status: 409, sentences: ["records/tops.csv is there already."] }),
  });
  await state.choose(tops);
  await state.answer("decimal", 0);
  await state.bringIn();
  expect(state.troubles.value).toEqual(["records/tops.csv is there already."]);
  expect([state.name.value, state.questions.value[0]?.chosen, state.broughtIn.value]).toEqual(["tops.csv", 0, null]);
});

it("brings in what was read, with its answers, and offers a notebook", async () => {
  const { state, taken } = opened();
  await state.choose(tops);
  await state.answer("decimal", 0);
  state.mayReplace(true);
  await state.bringIn();
  expect(taken).toEqual([
    { name: "tops.csv", base64: BYTES, answers: { read: { decimal: "," }, about: {} }, replace: true },
  ]);
  expect(state.broughtIn.value).toEqual({ table: "records/tops.csv", suggestion });
  expect(state.unsaved.value).toBe(false);
});

it("brings in under the name that was typed just now, once it is read", async () => {
  const { state, read, taken } = opened();
  await state.choose(tops);
  const renamed = state.rename("may.csv");
  await Promise.all([renamed, state.bringIn(), state.bringIn()]);
  expect(read.map(({ name }) => name)).toEqual(["tops.csv", "may.csv"]);
  expect(taken.map(({ name }) => name)).toEqual(["may.csv"]);
});

it("says of a file that is too large what to do, and sends nothing", async () => {
  const { state, read } = opened();
  await state.choose({ name: "long.csv", size: 60 * 1024 * 1024 });
  expect(state.troubles.value[0]).toMatch(/long\.csv is larger than 47 MB.*Copy it into the folder/);
  expect(read).toEqual([]);
});

it("says of a notebook that it is none of the tables, and sends nothing", async () => {
  const { state, read } = opened();
  await state.choose({ name: "Tops.MD", size: 100 });
  expect(state.troubles.value[0]).toMatch(/Tops\.MD is a notebook, not a table\. Copy it into the folder/);
  expect([read, state.unsaved.value, state.name.value]).toEqual([[], false, ""]);
});

it("does not say that a picture was read", async () => {
  const { state } = opened({
    read: async (file) => ({ ok: true, value: readingOf(file, { tableCount: 0, questions: [], warningCount: 1 }) }),
  });
  await state.choose({ name: "top.png", size: 100 });
  expect(state.message.value).toBe("Not a table: nothing can be brought in.");
});

it("adds a table to a notebook by the normal save, at its end and under a free name", async () => {
  const saved: string[][] = [];
  const { state } = opened({
    save: async (...asked) => {
      saved.push(asked);
      return { ok: true, value: samplePage() };
    },
  });
  await state.choose(tops);
  await state.bringIn();
  await state.addTo("shop.md");
  const { text, digest } = samplePage();
  expect(saved).toEqual([["shop.md", `${text}\n\`\`\`records tops_2\nfrom records/tops.csv\n\`\`\`\n`, digest]]);
});

it("ends lines as the notebook does", () => {
  const page = { ...samplePage(), text: "Prose.\r\n", result: { ...samplePage().result, entries: [] } };
  expect(withRecordsEntry(page, suggestion.entry)).toBe(
    "Prose.\r\n\r\n```records tops\r\nfrom records/tops.csv\r\n```\r\n",
  );
});
