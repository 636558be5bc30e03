import "../../src/app/styles/whole-page.css";
import { render } from "preact";
import { afterEach, expect, it, vi } from "vitest";
import { page, userEvent } from "vitest/browser";
import type { RecordsState } from "../../src/app/state/records-state.ts";
import { recordsState } from "../../src/app/state/records-state.ts";
import { RecordsView } from "../../src/app/views/records-view.tsx";
import { StatusLine } from "../../src/app/views/status-line.tsx";
import { axeFaults } from "../support/axe-faults.ts";
import { sampleRecords } from "../support/sample-records.ts";

const Shown = ({ state }: { readonly state: RecordsState }) => (
  <main class="sheet">
    <StatusLine message={state.message.value} troubles={state.troubles.value} unsaved={state.unsaved.value} />
    <RecordsView state={state} />
  </main>
);

async function opened(count = 30) {
  const sample = sampleRecords(count);
  let ids = 0;
  const state = recordsState(sample.api, () => `edit-${++ids}`);
  const root = document.createElement("div");
  document.documentElement.lang = "en";
  document.title = "records/tops.csv · Thumbrule";
  document.body.append(root);
  await state.open({ file: "records/tops.csv", table: 1 });
  render(<Shown state={state} />, root);
  await expect.element(page.getByRole("grid")).toBeVisible();
  return { ...sample, state, root };
}
afterEach(() => {
  for (const child of [...document.body.children]) {
    render(null, child);
    child.remove();
  }
  document.documentElement.style.colorScheme = "";
});
const focused = () => document.activeElement as HTMLElement;
/** Row (from 1) and column of the cell that has focus. */
const at = () => [Number(focused().closest("tr")?.dataset.position) + 1, Number(focused().dataset.col)];
const into = (row: number, col: number) => vi.waitFor(() => expect(at()).toEqual([row, col]));
const status = () => page.getByRole("status");

it.each(["light", "dark"])("has no fault that a checker of accessibility finds, %s", async (scheme) => {
  const { state, root } = await opened();
  document.documentElement.style.colorScheme = scheme;
  for (const details of root.querySelectorAll("details")) details.open = true;
  expect(await axeFaults(root)).toEqual([]);
  await state.goToRow(3, 2);
  await expect.element(page.getByText("This cell is not a number that can be read.").last()).toBeVisible();
  expect(await axeFaults(root)).toEqual([]);
  state.begin();
  await expect.element(page.getByRole("textbox", { name: /Thickness of row 3/ })).toBeVisible();
  expect(await axeFaults(root)).toEqual([]);
});

it("says unit, kind and warnings as words in the column's head, and the raw text under a reading", async () => {
  const { root } = await opened();
  const heads = [...root.querySelectorAll("thead th")].map((head) => head.textContent);
  expect(heads).toEqual(["row", "Top IDtext", "Thicknessquantity, mm1 warning", "Remarkstext"]);
  const cell = root.querySelector("[data-position='2'] [data-col='2']");
  expect(cell?.querySelector(".reading")?.textContent).toBe("not readable");
  expect(cell?.querySelector(".beneath")?.textContent).toBe("2.3.1warning");
});

it("is moved through by the keys of a grid, with one stop for Tab", async () => {
  const { state } = await opened(500);
  expect(document.querySelectorAll("table [tabindex='0']")).toHaveLength(1);
  await state.go({ position: 0, col: 1 });
  await into(1, 1);
  for (const [key, row, col] of [
    ["{ArrowDown}", 2, 1],
    ["{ArrowRight}", 2, 2],
    ["{End}", 2, 3],
    ["{ArrowRight}", 2, 3],
    ["{Home}", 2, 0],
    ["{ArrowUp}", 1, 0],
    ["{ArrowUp}", 1, 0],
    ["{Control>}{End}{/Control}", 500, 3],
    ["{ArrowDown}", 500, 3],
    ["{Control>}{Home}{/Control}", 1, 0],
  ] as const) {
    await userEvent.keyboard(key);
    await into(row, col);
  }
  await userEvent.keyboard("{PageDown}");
  await vi.waitFor(() => expect(at()[0]).toBeGreaterThan(3));
});

it("knows its size though few of 100,000 rows are drawn, and keeps the focus of a row out of view", async () => {
  const { state, root } = await opened(100_000);
  expect(page.getByRole("grid").element().getAttribute("aria-rowcount")).toBe("100001");
  expect(page.getByRole("grid").element().getAttribute("aria-colcount")).toBe("4");
  expect(root.querySelectorAll("tbody tr").length).toBeLessThan(80);
  await state.go({ position: 1, col: 1 });
  await into(2, 1);
  const grid = root.querySelector(".records-grid")!;
  grid.scrollTop = grid.scrollHeight / 2;
  await vi.waitFor(() => expect(page.getByText("T-50000", { exact: true }).elements()).toHaveLength(1));
  expect(at()).toEqual([2, 1]);
  expect(root.querySelectorAll("tbody tr").length).toBeLessThan(80);
  const middle = page.getByText("T-50000", { exact: true }).element().closest("tr");
  expect(middle?.getAttribute("aria-rowindex")).toBe("50001");
  await userEvent.keyboard("{Control>}{End}{/Control}");
  await into(100_000, 3);
  await vi.waitFor(() => {
    const [cell, frame] = [focused().getBoundingClientRect(), grid.getBoundingClientRect()];
    expect(cell.top).toBeGreaterThanOrEqual(frame.top);
    expect(cell.bottom).toBeLessThanOrEqual(frame.bottom);
  });
});

it("never hides the focused cell under the heads", async () => {
  const { state, root } = await opened(500);
  await state.goToRow(200, 3);
  await into(200, 3);
  const head = root.querySelector("thead th")!.getBoundingClientRect();
  const side = root.querySelector("thead th")!.getBoundingClientRect().right;
  for (let up = 199; up >= 175; up--) {
    await userEvent.keyboard("{ArrowUp}");
    await into(up, 3);
    expect(focused().getBoundingClientRect().top).toBeGreaterThanOrEqual(head.bottom - 1);
  }
  await userEvent.keyboard("{ArrowLeft}");
  expect(focused().getBoundingClientRect().left).toBeGreaterThanOrEqual(side - 1);
});

it("opens a warning's sentence under its cell, says it with the cell, and closes it by Escape", async () => {
  const { state } = await opened();
  await state.go({ position: 2, col: 1 });
  await into(3, 1);
  await userEvent.keyboard("{ArrowRight}");
  await into(3, 2);
  const slip = page.getByRole("group", { name: "About this cell" });
  await expect.element(slip).toHaveTextContent("Warning: This cell is not a number that can be read.");
  const described = document.getElementById(focused().getAttribute("aria-describedby") ?? "");
  expect(described?.textContent).toContain("not a number");
  expect(described!.getBoundingClientRect().top).toBeGreaterThanOrEqual(focused().getBoundingClientRect().bottom - 1);
  await userEvent.keyboard("{Escape}");
  await vi.waitFor(() => expect(slip.elements()).toHaveLength(0));
  expect(at()).toEqual([3, 2]);
});

it.each(["{Enter}", "{F2}"])(
  "edits a cell by %s: Enter saves, focus is back on the cell, and it is said",
  async (key) => {
    const { state, rows } = await opened();
    await state.goToRow(3, 2);
    await into(3, 2);
    await userEvent.keyboard(key);
    await expect.element(page.getByRole("textbox", { name: "Thickness of row 3, as it is written" })).toHaveFocus();
    await userEvent.keyboard("2.31{Enter}");
    await expect.element(status()).toHaveTextContent("Saved: Thickness of row 3 is read as 2.31 mm.");
    await into(3, 2);
    expect(rows()[2]?.cells[1]).toBe("2.31");
    await expect
      .element(page.getByRole("group", { name: "About this cell" }))
      .toHaveTextContent("In the file it still says “2.3.1”");
  },
);

it("leaves a cell as it was by Escape, and focus is back on it", async () => {
  const { state, server } = await opened();
  await state.goToRow(4, 2);
  await into(4, 2);
  await userEvent.keyboard("{Enter}9{Escape}");
  await into(4, 2);
  expect(server.ids).toEqual([]);
});

it("keeps a line break that a cell has, and Shift with Enter writes one", async () => {
  const { state, rows } = await opened();
  await state.goToRow(4, 3);
  await into(4, 3);
  await userEvent.keyboard("{Enter}a{Shift>}{Enter}{/Shift}b{Enter}");
  await vi.waitFor(() => expect(rows()[3]?.cells[2]).toBe("a\nb"));
  await userEvent.keyboard("{Enter}{End}c{Enter}");
  await vi.waitFor(() => expect(rows()[3]?.cells[2]).toMatch(/^a\nbc$/));
});

it("keeps what was typed when the table is another by now, and says what to do", async () => {
  const { state, another } = await opened();
  await state.goToRow(3, 2);
  await into(3, 2);
  await userEvent.keyboard("{Enter}2.31");
  another(3, 2, "2.4");
  await userEvent.keyboard("{Enter}");
  await expect.element(page.getByText("What you typed stays here.", { exact: false })).toBeVisible();
  await userEvent.click(page.getByRole("button", { name: "Read again" }));
  await expect.element(page.getByText("It says “2.4” now.")).toBeVisible();
  await expect.element(page.getByRole("textbox", { name: /Thickness of row 3/ })).toHaveValue("2.31");
});

it("sets a row aside with a reason under the row, shows the reason, and brings it back, all by keys", async () => {
  const { state, rows, root } = await opened();
  await state.goToRow(5, 0);
  await into(5, 0);
  await userEvent.keyboard("{Enter}");
  await expect.element(page.getByRole("textbox", { name: "Why row 5 is set aside" })).toHaveFocus();
  await userEvent.keyboard("{Enter}");
  await expect.element(page.getByText("Say why, in a few words", { exact: false })).toBeVisible();
  await userEvent.keyboard("cracked{Enter}");
  await into(5, 0);
  expect(rows()[4]?.setAside).toBe("cracked");
  expect(root.querySelector("[data-position='4'] th")?.textContent).toBe("5 set asidecracked");
  await userEvent.keyboard("{Enter}");
  await expect.element(page.getByRole("button", { name: "Bring it back" })).toHaveFocus();
  await userEvent.keyboard("{Enter}");
  await into(5, 0);
  expect(rows()[4]?.setAside).toBeUndefined();
});

it("lists every warning, each leading to its cell, and shows only the rows that have one", async () => {
  await opened();
  await userEvent.click(page.getByText("1 warning", { exact: true }).first());
  await userEvent.click(page.getByRole("button", { name: "row 3, Thickness" }));
  await into(3, 2);
  await userEvent.click(page.getByRole("checkbox", { name: "Only rows with warnings" }));
  await expect.element(status()).toHaveTextContent("1 row with warnings.");
  expect(page.getByRole("grid").element().getAttribute("aria-rowcount")).toBe("2");
});

it("leaves focus on the choice of rows when other rows come", async () => {
  const { state } = await opened(500);
  await state.goToRow(400, 1);
  await into(400, 1);
  const box = page.getByRole("checkbox", { name: "Only rows with warnings" });
  await userEvent.click(box);
  await expect.element(status()).toHaveTextContent("1 row with warnings.");
  await userEvent.click(box);
  await expect.element(status()).toHaveTextContent("All 500 rows.");
  await expect.element(box).toHaveFocus();
});

it("adds a record by a form that names unit, kind and meaning, and goes to it", async () => {
  const { rows } = await opened();
  await userEvent.click(page.getByText("Add a record"));
  const field = page.getByRole("textbox", { name: "Thickness in millimetre" });
  await expect.element(field).toHaveAccessibleDescription("quantity: mean of five readings, before planing");
  await userEvent.fill(field, "2.5");
  await userEvent.keyboard("{Enter}");
  await into(31, 1);
  expect(rows()[30]?.cells).toEqual(["", "2.5", ""]);
  await expect.element(status()).toHaveTextContent("Added as row 31.");
});

it("says what writing will do before it is done", async () => {
  const { state, server } = await opened();
  expect(page.getByRole("button", { name: "Write into the file" }).elements()).toHaveLength(0);
  await state.add(["T-99", "2.5", ""]);
  const button = page.getByRole("button", { name: "Write into the file" });
  await expect
    .element(button)
    .toHaveAccessibleDescription(/^1 edit is kept beside the file.+keeps the old file beside it/);
  await userEvent.click(button);
  await vi.waitFor(() => expect(server.written).toBe(1));
});

it("leads to the other tables of its file by their names", async () => {
  await opened();
  const tables = page.getByRole("navigation", { name: "Tables of records/tops.csv" });
  await expect.element(tables.getByRole("link", { name: "tops" })).toHaveAttribute("aria-current", "page");
  await expect
    .element(tables.getByRole("link", { name: "offcuts" }))
    .toHaveAttribute("href", "#records/tops.csv?table=2");
});

it.each([320, 1280])("keeps the page's width at %i, with only the grid scrolling sideways", async (width) => {
  await page.viewport(width, 700);
  const { state, root } = await opened();
  for (const details of root.querySelectorAll("details")) details.open = true;
  await state.goToRow(3, 2);
  await expect.element(page.getByRole("group", { name: "About this cell" })).toBeVisible();
  expect(document.documentElement.scrollWidth).toBeLessThanOrEqual(width);
  expect(root.querySelector(".records-grid")!.clientWidth).toBeGreaterThan(width - 60);
  const [slip, frame] = [root.querySelector(".slip")!, root.querySelector(".records-grid")!].map((each) =>
    each.getBoundingClientRect(),
  );
  expect(slip!.right).toBeLessThanOrEqual(frame!.right + 1);
  expect(slip!.left).toBeGreaterThanOrEqual(frame!.left - 1);
});
