// The page's start: state over the api, the address bar as the name of the open notebook, and platform keys.
import "./styles/whole-page.css";
import { effect } from "@preact/signals";
import { render } from "preact";
import { openForPrint } from "./open-for-print.ts";
import { Page } from "./page.tsx";
import { api } from "./state/api.ts";
import { base64Of } from "./state/base64-of.ts";
import { importApi } from "./state/import-api.ts";
import { importState } from "./state/import-state.ts";
import { pageState } from "./state/page-state.ts";
import { addressFromHash } from "./state/records-address.ts";
import { recordsApi } from "./state/records-api.ts";
import { recordsState } from "./state/records-state.ts";

const AWAY = "The program that serves this page does not answer. What you wrote stays here; start it again and save.";
const state = pageState(api(AWAY));
const records = recordsState(recordsApi(AWAY), () => crypto.randomUUID());
const bringing = importState(importApi(AWAY), (file) => base64Of(file as File));
const loadEditor = async (input: Parameters<typeof import("./editor/code-editor.ts").codeEditor>[0]) =>
  (await import("./editor/code-editor.ts")).codeEditor(input);
const today = new Date(Date.now() - new Date().getTimezoneOffset() * 60_000).toISOString().slice(0, 10);

async function keep(date: string, without: readonly string[]): Promise<void> {
  const copy = await state.share(date, without);
  if (copy === null) return;
  const link = document.createElement("a");
  link.href = URL.createObjectURL(copy);
  link.download = `${(state.shown.value?.file ?? "notebook").replace(/\.md$/, "")}-${date}.html`;
  link.click();
  URL.revokeObjectURL(link.href);
}

/** Whether the address leads to bringing in a table; `#begin=records/tops.csv` offers a notebook for one that lies in the folder. */
function followBringing(named: string): boolean {
  const table = /^begin=(.+)$/.exec(named)?.[1];
  // What was brought in before is done; the link leads to a fresh start.
  if (named === "bring-in" && bringing.broughtIn.value !== null) bringing.putAway();
  bringing.show(named === "bring-in" || table !== undefined);
  if (table !== undefined) void bringing.offer(table);
  return bringing.shown.value;
}

/** The table or notebook named after the hash; without one the first of the folder, the first day before others. */
async function follow(): Promise<void> {
  const named = decodeURIComponent(location.hash.slice(1));
  if (named === "main") return;
  if (followBringing(named)) return void state.list();
  const table = addressFromHash(location.hash);
  await records.open(table);
  if (table !== null) return;
  const list = state.list();
  if (named === "") await list;
  if (named !== decodeURIComponent(location.hash.slice(1))) return;
  const listed = state.listing.value ?? [];
  const first = listed.find(({ file }) => file.includes("first-day")) ?? listed[0];
  const file = named === "contents" ? null : named === "" ? (first?.file ?? null) : named;
  if (file === null) {
    const tables = records.list();
    if (named === "") await tables;
    // A folder with nothing in it opens on bringing something in.
    if (named === "" && records.tables.value.length === 0 && location.hash === "") location.replace("#bring-in");
  }
  await state.open(file);
}

// A file dropped anywhere is one to bring in; without this the browser would leave the page for it.
window.addEventListener("dragover", (event) => event.preventDefault());
window.addEventListener("drop", (event) => {
  event.preventDefault();
  const file = event.dataTransfer?.files[0];
  if (file === undefined) return;
  location.hash = "bring-in";
  void bringing.choose(file);
});
window.addEventListener("hashchange", () => void follow());
window.addEventListener("keydown", (event) => {
  const writing = event
    .composedPath()
    .some(
      (target) =>
        target instanceof HTMLElement && (target.isContentEditable || /^(input|textarea)$/i.test(target.tagName)),
    );
  const key = event.key.toLowerCase();
  // Doing again is Shift+Z on some platforms and Y on others.
  if (writing || !(event.ctrlKey || event.metaKey) || (key !== "z" && !(key === "y" && event.ctrlKey))) return;
  event.preventDefault();
  const at = records.file.value === null ? state : records;
  void (event.shiftKey || key === "y" ? at.redo() : at.undo());
});
window.addEventListener("beforeunload", (event) => {
  if (state.unsaved.value || records.unsaved.value || bringing.unsaved.value) event.preventDefault();
});
effect(() => {
  const title = bringing.shown.value ? "Bring in a table" : (records.file.value ?? state.shown.value?.result.title);
  document.title = `${state.unsaved.value || records.unsaved.value ? "Not saved: " : ""}${title ?? "Contents"} · Thumbrule`;
});

const root = document.getElementById("root");
if (root !== null)
  render(
    <Page
      state={state}
      records={records}
      bringing={bringing}
      go={(notebook) => {
        if (notebook !== null) location.hash = encodeURIComponent(notebook);
      }}
      today={today}
      loadEditor={loadEditor}
      keep={(date, without) => void keep(date, without)}
    />,
    root,
  );
void follow();
// A hidden page gives its stream back: a browser has few connections for one place.
let stop: (() => void) | null = null;
const listen = () => {
  if (document.hidden) {
    stop?.();
    stop = null;
  } else
    stop ??= api("").watch((file) => {
      void state.changedOutside(file);
      void records.changedOutside(file);
    });
};
document.addEventListener("visibilitychange", listen);
listen();
openForPrint(window);
