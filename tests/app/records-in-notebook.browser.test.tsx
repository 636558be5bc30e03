// Where a notebook and the contents lead to records, and what they say of a cell with a warning.
import "../../src/app/styles/whole-page.css";
import { render } from "preact";
import { afterEach, expect, it } from "vitest";
import { page, userEvent } from "vitest/browser";
import { recordsAddress } from "../../src/app/state/records-address.ts";
import { ContentsView } from "../../src/app/views/contents-view.tsx";
import { RecordsLinks } from "../../src/app/views/records-links.ts";
import { TableView } from "../../src/app/views/table-view.tsx";
import { TraceList } from "../../src/app/views/trace-list.tsx";
import { axeFaults } from "../support/axe-faults.ts";

function shown(what: preact.ComponentChild): Element {
  const root = document.createElement("main");
  document.documentElement.lang = "en";
  document.title = "Records";
  document.body.append(root);
  render(what, root);
  return root;
}
afterEach(() => {
  for (const child of [...document.body.children]) {
    render(null, child);
    child.remove();
  }
});

const column = { name: "mass", header: "Mass", kind: "quantity", unit: "g", warnings: 1 };
const table = {
  kind: "table",
  caption: "tops",
  files: ["records/tops.csv"],
  columns: [column],
  rowCount: 1,
  notes: [],
  rows: [
    { piece: "T-1", row: 1, cells: [{ raw: "190.O", reading: "not readable", warning: "A letter in a number." }] },
  ],
} as const;

it("opens a warning of a cell by keyboard, and leads to the grid", async () => {
  const root = shown(
    <RecordsLinks.Provider value={recordsAddress}>
      <TableView table={table} whole={false} />
    </RecordsLinks.Provider>,
  );
  const sentence = page.getByText("A letter in a number.");
  await expect.element(sentence).not.toBeVisible();
  (page.getByText("warning", { exact: true }).element() as HTMLElement).focus();
  await userEvent.keyboard("{Enter}");
  await expect.element(sentence).toBeVisible();
  const link = page.getByRole("link", { name: "Edit these records: records/tops.csv" });
  await expect.element(link).toHaveAttribute("href", "#records/tops.csv");
  expect(await axeFaults(root)).toEqual([]);
});

it("leads nowhere from a copy, which has no grid", () => {
  const root = shown(<TableView table={table} whole={true} />);
  expect(root.querySelectorAll("a")).toHaveLength(0);
});

it("leads from a traced cell to that cell of its table", async () => {
  const cell = { file: "book.xlsx", table: "Sheet 2", row: 7, col: 3, column: "mass", raw: "2,71", reading: "2.71 g" };
  const root = shown(
    <RecordsLinks.Provider value={recordsAddress}>
      <TraceList steps={[{ what: "cells", says: "1 raw cell", cells: [cell] }]} />
    </RecordsLinks.Provider>,
  );
  for (const details of root.querySelectorAll("details")) details.open = true;
  await expect
    .element(page.getByRole("link", { name: "7" }))
    .toHaveAttribute("href", "#book.xlsx?named=Sheet%202&row=7&col=3");
});

it("says nothing of notebooks before it knows them", () => {
  const text = (notebooks: [] | null) => shown(<ContentsView notebooks={notebooks} tables={[]} />).textContent;
  expect(text([])).toContain("no notebook");
  expect(text(null)).not.toContain("no notebook");
});

it("lists the tables of the folder in the contents", async () => {
  const tables = [
    { file: "records/tops.csv", tables: 1, rows: 71 },
    { file: "book.xlsx", tables: 3, rows: 1 },
  ];
  const root = shown(<ContentsView notebooks={[{ file: "a.md", title: "A", written: null }]} tables={tables} />);
  const list = page.getByRole("list", { name: "Tables of records" });
  await expect
    .element(list.getByRole("link", { name: "records/tops.csv" }))
    .toHaveAttribute("href", "#records/tops.csv");
  expect([...root.querySelectorAll("ul small")].map((each) => each.textContent)).toEqual([
    "71 records",
    "1 record in 3 tables",
  ]);
});
