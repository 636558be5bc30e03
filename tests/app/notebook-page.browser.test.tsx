import "../../src/app/styles/whole-page.css";
import { render } from "preact";
import { afterEach, expect, it, vi } from "vitest";
import { page, userEvent } from "vitest/browser";
import { codeEditor } from "../../src/app/editor/code-editor.ts";
import { Page } from "../../src/app/page.tsx";
import type { Api } from "../../src/app/state/api.ts";
import type { ImportApi } from "../../src/app/state/import-api.ts";
import { importState } from "../../src/app/state/import-state.ts";
import { pageState } from "../../src/app/state/page-state.ts";
import type { RecordsApi } from "../../src/app/state/records-api.ts";
import { recordsState } from "../../src/app/state/records-state.ts";
import { drawPicture } from "../../src/notebook/share/draw-picture.ts";
import { drawingOfElement } from "../../src/notebook/share/drawing-of-element.ts";
import { axeFaults } from "../support/axe-faults.ts";
import { samplePage } from "../support/sample-page.ts";

const sample = samplePage(((picture: never) => drawingOfElement(drawPicture(picture, document))) as never);

async function opened() {
  const saved: string[] = [];
  const api: Api = {
    notebooks: async () => ({ ok: true, value: [{ file: "tops.md", title: "Tops", written: "2026-03-14" }] }),
    open: async () => ({ ok: true, value: sample }),
    preview: async (_, text) => ({ ok: true, value: { ...sample, text } }),
    save: async (_, text) => {
      saved.push(text);
      return { ok: true, value: { ...sample, text } };
    },
    share: async () => ({ ok: true, value: new Blob() }),
    watch: () => () => undefined,
  };
  const state = pageState(api);
  const records = recordsState({} as RecordsApi, () => "1");
  const keep = vi.fn();
  const root = document.createElement("div");
  document.documentElement.lang = "en";
  document.title = "Tops · Thumbrule";
  document.body.append(root);
  await state.list();
  render(
    <Page
      state={state}
      records={records}
      bringing={importState({} as ImportApi, async () => new Blob())}
      go={() => undefined}
      today="2026-03-14"
      loadEditor={async (input) => codeEditor(input)}
      keep={keep}
    />,
    root,
  );
  return { state, saved, keep, root };
}
afterEach(() => {
  for (const child of [...document.body.children]) {
    render(null, child);
    child.remove();
  }
  document.documentElement.style.colorScheme = "";
});

it.each(["light", "dark"])("has no fault that a checker of accessibility finds, %s", async (scheme) => {
  const { state, root } = await opened();
  document.documentElement.style.colorScheme = scheme;
  expect(await axeFaults(root)).toEqual([]);
  await state.open("tops.md");
  await expect.element(page.getByRole("heading", { level: 1 })).toHaveTextContent("Do stiffer tops end up thinner?");
  for (const details of root.querySelectorAll("details")) details.open = true;
  expect(await axeFaults(root)).toEqual([]);
  state.edit(4);
  await expect.element(page.getByRole("textbox", { name: "Text of question-1" })).toBeVisible();
  expect(await axeFaults(root)).toEqual([]);
});

it("shows the sentence first, then the picture, then why", async () => {
  const { state, root } = await opened();
  await state.open("tops.md");
  await expect.element(page.getByText("Stiffer tops end up thinner:")).toBeVisible();
  const order = [...(root.querySelector('[data-answer="relation"]')?.children ?? [])].map((child) => child.className);
  expect(order).toEqual(["sentence", "picture-view", "cautions", "why-details"]);
  expect(root.querySelectorAll("svg.chart circle, svg.chart path").length).toBeGreaterThan(6);
});

it("says each verdict by a word and a shape", async () => {
  const { state, root } = await opened();
  await state.open("tops.md");
  await vi.waitFor(() => expect(root.querySelectorAll(".verdict-mark")).toHaveLength(3));
  const marks = [...root.querySelectorAll(".verdict-mark")].map((mark) => [
    mark.textContent?.trim(),
    mark.querySelector("svg")?.innerHTML,
  ]);
  expect(marks.map(([word]) => word)).toEqual(["Kept", "Broken", "Can’t tell yet"]);
  expect(new Set(marks.map(([, shape]) => shape)).size).toBe(3);
});

it("leads from the answer down to the raw cell", async () => {
  const { state } = await opened();
  await state.open("tops.md");
  await userEvent.click(page.getByText("Why").first());
  await userEvent.click(page.getByText("Where this comes from").first());
  await userEvent.click(page.getByText("6 raw cells of final_thickness").first());
  await expect.element(page.getByRole("cell", { name: "2,71", exact: true }).first()).toBeVisible();
});

it("opens a sentence by keyboard, writes it, and saves it", async () => {
  const { state, saved } = await opened();
  await state.open("tops.md");
  const sentence = page.getByRole("button", { name: /^Write question-1/ });
  (sentence.element() as HTMLElement).focus();
  await userEvent.keyboard("{Enter}");
  await expect.element(page.getByRole("textbox", { name: "Text of question-1" })).toBeVisible();
  await vi.waitFor(() => expect(document.querySelector("textarea")?.hidden).toBe(true));
  await userEvent.keyboard("{Control>}{End}{/Control} where species is cedar{Control>}{Enter}{/Control}");
  await vi.waitFor(() => expect(saved).toHaveLength(1));
  expect(saved[0]).toBe(sample.text.replace("allowing for species", "allowing for species where species is cedar"));
  await expect.element(page.getByRole("status")).toHaveTextContent("Saved to tops.md.");
  await vi.waitFor(() => expect(document.activeElement?.getAttribute("aria-label")).toMatch(/^Write question-1/));
});
