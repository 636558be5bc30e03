// Bringing in a table in a browser, over a server in memory that reads as the real one does.
import "../../src/app/styles/whole-page.css";
import { render } from "preact";
import { afterEach, expect, it, vi } from "vitest";
import { page, userEvent } from "vitest/browser";
import { base64Of } from "../../src/app/state/base64-of.ts";
import type { ImportApi, ImportFile } from "../../src/app/state/import-api.ts";
import { importState } from "../../src/app/state/import-state.ts";
import { ImportView } from "../../src/app/views/import-view.tsx";
import { StatusLine } from "../../src/app/views/status-line.tsx";
import { readTable } from "../../src/core/records/read-table.ts";
import { importReadingOf } from "../../src/notebook/share/import-reading-of.ts";
import { axeFaults } from "../support/axe-faults.ts";
import { samplePage } from "../support/sample-page.ts";

const UNTIDY = [
  "Spring sale,,,",
  "",
  "Piece,Wood,Mass (g),Bought on",
  'A,Cedar,"1,234",3/5/2024',
  'B,cedar,"2,310",4/6/2024',
  'C,spruce,"4O",5/6/2024',
  "C,spruce,,",
  "",
].join("\n");

function opened(own: Partial<ImportApi> = {}) {
  const readOf = async ({ name, base64, answers }: ImportFile) => {
    const bytes = new Uint8Array(await base64.arrayBuffer());
    const held = answers ?? { read: {}, about: {} };
    const result = readTable(bytes, `records/${name}`, held.read);
    return importReadingOf({ bytes, result, answers: held, remembered: null, exists: name === "taken.csv" });
  };
  const suggestion = { file: "tops.md", text: "# Tops\n", entry: "```records tops\n```\n" };
  const api: ImportApi = {
    read: async (file) => ({ ok: true, value: await readOf(file) }),
    take: async ({ name }) => ({ ok: true, value: { file: `records/${name}`, tables: ["tops"], suggestion } }),
    suggest: async () => ({ ok: true, value: suggestion }),
    begin: async (file) => ({ ok: true, value: { ...samplePage(), file } }),
    open: async () => ({ ok: true, value: samplePage() }),
    save: async (file) => ({ ok: true, value: { ...samplePage(), file } }),
    ...own,
  };
  const state = importState(api, async (file) => file as File);
  const go = vi.fn();
  const root = document.createElement("div");
  document.documentElement.lang = "en";
  document.title = "Bring in a table · Thumbrule";
  document.body.append(root);
  const Whole = () => (
    <div class="sheet">
      <StatusLine message={state.message.value} troubles={state.troubles.value} unsaved={false} />
      <main>
        <ImportView state={state} notebooks={[{ file: "shop.md", title: "The shop", written: null }]} go={go} />
      </main>
    </div>
  );
  render(<Whole />, root);
  return { state, root, go, choose: () => state.choose(new File([UNTIDY], "tops.csv")) };
}
afterEach(() => {
  for (const child of [...document.body.children]) {
    render(null, child);
    child.remove();
  }
  document.documentElement.style.colorScheme = "";
});

it("encodes a file in pieces that join to its base64", async () => {
  const bytes = Uint8Array.from({ length: 3 * 2 ** 20 + 5 }, (_, at) => at % 251);
  const text = await (await base64Of(new Blob([bytes]))).text();
  const back = atob(text);
  expect([back.length, bytes.findIndex((byte, at) => back.charCodeAt(at) !== byte)]).toEqual([bytes.length, -1]);
  expect(await (await base64Of(new Blob([]))).text()).toBe("");
});

it.each(["light", "dark"])("has no fault that a checker of accessibility finds, %s", async (scheme) => {
  const { state, root, choose } = opened();
  document.documentElement.style.colorScheme = scheme;
  expect(await axeFaults(root)).toEqual([]);
  await choose();
  for (const details of root.querySelectorAll("details")) details.open = true;
  expect(await axeFaults(root)).toEqual([]);
  await state.bringIn();
  await expect.element(page.getByRole("heading", { level: 1 })).toHaveTextContent("records/tops.csv is in the folder");
  expect(await axeFaults(root)).toEqual([]);
});

it("answers by keyboard, keeps focus on the answer, and says what is left to whoever cannot see it", async () => {
  const { choose } = opened();
  await choose();
  const comma = page.getByRole("radio", { name: /^The comma/ });
  (comma.element() as HTMLElement).focus();
  await userEvent.keyboard(" ");
  await expect
    .element(page.getByRole("status"))
    .toHaveTextContent(/^Read again: \d+ warnings left, 2 questions open\.$/);
  await expect.element(comma).toBeChecked();
  expect(document.activeElement).toBe(comma.element());
});

it("leads from each warning to its cell, its row or its column's head", async () => {
  const { root, choose } = opened();
  await choose();
  for (const details of root.querySelectorAll("details")) details.open = true;
  const ways = [...root.querySelectorAll<HTMLButtonElement>(".import-warnings li button")];
  const places = ways.map((way) => {
    way.click();
    return document.activeElement?.id;
  });
  expect(ways.length).toBeGreaterThan(5);
  expect(new Set(places).size).toBe(ways.length);
  for (const id of places) expect(id).toMatch(/^read-1-\d+-\d+$/);
  expect(document.activeElement?.closest(".import-table")).not.toBeNull();
});

it("says under the cell what is to be minded, beside its raw text", async () => {
  const { root, choose } = opened();
  await choose();
  const cell = root.querySelector("#read-1-3-3");
  expect(cell?.querySelector(".raw")?.textContent).toBe("4O");
  expect(cell?.querySelector(".warning")?.textContent).toMatch(/letter stands where a digit should/i);
});

it("keeps the form as it was typed when the server refuses", async () => {
  const { state, choose } = opened({
    take: async () => ({ ok: false, status: 507, sentences: ["The disk is full."] }),
  });
  await choose();
  await state.rename("spring.csv");
  await userEvent.click(page.getByRole("button", { name: "Bring it in" }));
  await expect.element(page.getByText("The disk is full.")).toBeVisible();
  await expect
    .element(page.getByRole("textbox", { name: "Its name in the folder called records" }))
    .toHaveValue("spring.csv");
});

it("brings nothing in over another file until that is ticked", async () => {
  const { state, choose } = opened();
  await choose();
  await state.rename("taken.csv");
  const button = page.getByRole("button", { name: "Bring it in" });
  await expect.element(button).toBeDisabled();
  await userEvent.click(page.getByRole("checkbox", { name: /There is a taken\.csv already/ }));
  await expect.element(button).toBeEnabled();
});

it("leads to the notebook that was begun, with its text as it was changed", async () => {
  const begun: string[][] = [];
  const { state, go, choose } = opened({
    begin: async (...asked) => {
      begun.push(asked);
      return { ok: true, value: { ...samplePage(), file: asked[0] } };
    },
  });
  await choose();
  await state.bringIn();
  await userEvent.fill(page.getByRole("textbox", { name: "How it begins" }), "# Mine\n");
  await userEvent.click(page.getByRole("button", { name: "Begin the notebook" }));
  await vi.waitFor(() => expect(go).toHaveBeenCalledWith("tops.md"));
  expect(begun).toEqual([["tops.md", "# Mine\n"]]);
});

const brought = (text: string) => {
  const { state, root } = opened();
  return state.choose(new File([text], "tops.csv")).then(() => root);
};

it("says how many records and columns there are, and how many of them it shows", async () => {
  const rows = Array.from({ length: 60 }, (_, i) => `T-${i},${2 + i / 100},${150 + i}`);
  const root = await brought(["Piece,Thickness (mm),Mass (g)", ...rows, ""].join("\n"));
  expect(root.querySelector("caption")?.textContent).toBe(
    "tops: 60 records, 3 columns; 50 of the 60 are shown, the first and those with a warning as far as there is room.",
  );
});

it("says of numbers whose unit it does not know that they have none", async () => {
  const root = await brought("Piece,Thickness (mn),Mass (g)\nA,2.1,150\nB,2.2,151\n");
  const kinds = [...root.querySelectorAll("thead small")].map((small) => small.textContent);
  expect(kinds).toEqual(["words", "quantity, no unit", "quantity, g"]);
});

it("says what to do where everything stands in one column", async () => {
  const root = await brought("piece thickness mass\nA1 2.31 140\nA2 2.40 150\n");
  expect(root.querySelector("caption")?.textContent).toMatch(
    /2 records, 1 column\. Where one line holds several cells/,
  );
});
