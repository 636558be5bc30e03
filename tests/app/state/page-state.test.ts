import { expect, it } from "vitest";
import type { Api } from "../../../src/app/state/api.ts";
import { pageState } from "../../../src/app/state/page-state.ts";
import type { PageData } from "../../../src/notebook/share/index.ts";
import { samplePage } from "../../support/sample-page.ts";

/** A server with one file; `digest` is the number of times it was written. */
function bench() {
  const file = { text: samplePage().text, version: 0, asked: 0 };
  const page = (text: string): PageData => ({ ...samplePage(), text, digest: String(file.version) });
  const api: Api = {
    notebooks: async () => ({ ok: true, value: [] }),
    open: async () => ({ ok: true, value: page(file.text) }),
    preview: async (_, text) => {
      file.asked++;
      return { ok: true, value: page(text) };
    },
    save: async (_, text, base) => {
      if (base !== String(file.version))
        return { ok: false, status: 409, sentences: ["stale"], theirs: page(file.text) };
      file.text = text;
      file.version++;
      return { ok: true, value: page(text) };
    },
    share: async () => ({ ok: true, value: new Blob() }),
    watch: () => () => undefined,
  };
  return { state: pageState(api), file };
}
const QUESTION = 4;
const sentence = "final_thickness against stiffness_along, allowing for species";
const rest = () => new Promise((done) => setTimeout(done, 0));

it("opens a sentence as its text, and the answer follows what is written", async () => {
  const { state, file } = bench();
  await state.open("tops.md");
  state.edit(QUESTION);
  expect(state.draft.value).toBe(sentence);
  state.write("final_thickness against density");
  await rest();
  expect(state.shown.value?.text).toContain("final_thickness against density");
  expect(state.unsaved.value).toBe(true);
  expect(file.text).toContain(sentence);
});

it("computes a storm of keystrokes as the first and the last", async () => {
  const { state, file } = bench();
  await state.open("tops.md");
  state.edit(QUESTION);
  for (let n = 0; n < 50; n++) state.write(`final_thickness against x${n}`);
  await rest();
  expect(file.asked).toBeLessThanOrEqual(2);
  expect(state.shown.value?.text).toContain("against x49");
});

it("says saved only once the file has it, and undoes and does again", async () => {
  const { state, file } = bench();
  const before = file.text;
  await state.open("tops.md");
  state.edit(QUESTION);
  state.write("final_thickness against density");
  expect(await state.save()).toBe(true);
  expect(state.message.value).toBe("Saved to tops.md.");
  const after = file.text;
  expect(after).toBe(before.replace(sentence, "final_thickness against density"));
  await state.undo();
  expect(file.text).toBe(before);
  await state.redo();
  expect(file.text).toBe(after);
  expect([state.canUndo.value, state.canRedo.value]).toEqual([true, false]);
});

it("keeps both versions when something else changed the file, and writes only what is chosen", async () => {
  const { state, file } = bench();
  await state.open("tops.md");
  state.edit(QUESTION);
  state.write("mine");
  file.text += "\ntheirs";
  file.version = 7;
  expect(await state.save()).toBe(false);
  expect(state.conflict.value?.theirs.text).toContain("theirs");
  expect(state.draft.value).toBe("mine");
  expect(file.text).toContain("theirs");
  await state.keepMine();
  expect(file.text).not.toContain("theirs");
  expect(state.conflict.value).toBeNull();
});

it("leaves what is being written alone when the file changes outside", async () => {
  const { state, file } = bench();
  await state.open("tops.md");
  state.edit(QUESTION);
  state.write("mine");
  file.version = 3;
  await state.changedOutside("tops.md");
  expect(state.draft.value).toBe("mine");
  state.leave();
  await state.changedOutside("tops.md");
  expect(state.shown.value?.digest).toBe("3");
});

it("shows the notebook that was asked for last, whichever answer comes last", async () => {
  const answers = new Map<string, () => void>();
  const api = {
    open: (file: string) =>
      new Promise((done) => answers.set(file, () => done({ ok: true, value: { ...samplePage(), file } }))),
  } as unknown as Api;
  const state = pageState(api);
  const both = [state.open("first.md"), state.open("second.md")];
  answers.get("second.md")?.();
  answers.get("first.md")?.();
  await Promise.all(both);
  expect(state.shown.value?.file).toBe("second.md");
});
