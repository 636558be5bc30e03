// The state of bringing in a table: the file, how it is read, what is asked and answered, and the notebook that may follow.
import type { ReadonlySignal } from "@preact/signals";
import { batch, computed, signal } from "@preact/signals";
import { limits, serviceProblem } from "../../core/base/index.ts";
import type { ImportAnswers, ImportQuestion, ImportReading } from "../../core/records/index.ts";
import type { Asked } from "./ask-server.ts";
import type { ImportApi, Suggestion } from "./import-api.ts";
import { withAnswer } from "./with-answer.ts";
import { withRecordsEntry } from "./with-records-entry.ts";

/** A question and the place of the choice that was made, null while it is open. */
export type AskedQuestion = { readonly question: ImportQuestion; readonly chosen: number | null };
/** A table that lies in the folder now, and the notebook that could begin with it. */
export type BroughtIn = { readonly table: string; readonly suggestion: Suggestion };
/** A file of the browser's, or what was pasted as one. */
export type ChosenFile = { readonly name: string; readonly size: number };

export type ImportState = {
  readonly shown: ReadonlySignal<boolean>;
  readonly name: ReadonlySignal<string>;
  readonly reading: ReadonlySignal<ImportReading | null>;
  /** The description whose answers it was read with, while they hold. */
  readonly remembered: ReadonlySignal<string | null>;
  readonly questions: ReadonlySignal<readonly AskedQuestion[]>;
  readonly busy: ReadonlySignal<boolean>;
  readonly replace: ReadonlySignal<boolean>;
  readonly broughtIn: ReadonlySignal<BroughtIn | null>;
  readonly message: ReadonlySignal<string>;
  readonly troubles: ReadonlySignal<readonly string[]>;
  /** Whether a file is chosen that has not been brought in. */
  readonly unsaved: ReadonlySignal<boolean>;
  readonly show: (shown: boolean) => void;
  readonly choose: (file: ChosenFile) => Promise<void>;
  readonly rename: (name: string) => Promise<void>;
  readonly answer: (id: string, choice: number) => Promise<void>;
  /** Takes back what was answered, so that everything is asked again. */
  readonly askAgain: () => Promise<void>;
  readonly mayReplace: (replace: boolean) => void;
  readonly bringIn: () => Promise<void>;
  /** Forgets the file: another can be chosen. */
  readonly putAway: () => void;
  /** Offers a notebook for a table that lies in the folder already. */
  readonly offer: (table: string) => Promise<void>;
  /** Begins the notebook, or adds the table to one; its file, null if that failed. */
  readonly begin: (name: string, text: string) => Promise<string | null>;
  readonly addTo: (notebook: string) => Promise<string | null>;
};

const none: ImportAnswers = { read: {}, about: {} };
/** Characters of base64 for so many bytes, and some for the rest of the request. */
const sentSize = (bytes: number) => Math.ceil(bytes / 3) * 4 + 64 * 1024;
const counted = (count: number, one: string) => `${count} ${one}${count === 1 ? "" : "s"}`;

/** The questions so far with those of a new reading: answered ones stay to be seen, open ones that are settled go. */
const nowAsked = (before: readonly AskedQuestion[], open: readonly ImportQuestion[]): readonly AskedQuestion[] => [
  ...before.filter(({ question, chosen }) => chosen !== null && !open.some(({ id }) => id === question.id)),
  ...open.map((question) => ({
    question,
    chosen: before.find((asked) => asked.question.id === question.id)?.chosen ?? null,
  })),
];

/** The state over an api. encoded: the bytes of a chosen file as base64. */
export function importState(api: ImportApi, encoded: (file: ChosenFile) => Promise<Blob>): ImportState {
  const shown = signal(false);
  const name = signal("");
  const reading = signal<ImportReading | null>(null);
  const remembered = signal<string | null>(null);
  const questions = signal<readonly AskedQuestion[]>([]);
  const busy = signal(false);
  const replace = signal(false);
  const broughtIn = signal<BroughtIn | null>(null);
  const message = signal("");
  const troubles = signal<readonly string[]>([]);
  const bytes = signal<Blob | null>(null);
  const answers = signal<ImportAnswers | null>(null);
  const run = { asked: 0, reading: Promise.resolve(), taking: false };

  function settle<T>(asked: Asked<T>): T | null {
    troubles.value = asked.ok ? [] : asked.sentences;
    return asked.ok ? asked.value : null;
  }

  const read = (word: string): Promise<void> => {
    run.reading = readNow(word);
    return run.reading;
  };

  /** Reads with the answers as they are; of several readings under way the last one asked for is shown. */
  async function readNow(word: string): Promise<void> {
    const base64 = bytes.value;
    if (base64 === null) return;
    const turn = ++run.asked;
    busy.value = true;
    const asked = await api.read({ name: name.value, base64, answers: answers.value });
    if (turn !== run.asked) return;
    batch(() => {
      busy.value = false;
      const found = settle(asked);
      if (found === null) {
        message.value = "Not read.";
        return;
      }
      reading.value = found;
      remembered.value = found.remembered ?? (answers.value === null ? null : remembered.value);
      questions.value = nowAsked(questions.value, found.questions);
      if (found.tableCount === 0) {
        message.value = "Not a table: nothing can be brought in.";
        return;
      }
      const open = questions.value.filter(({ chosen }) => chosen === null).length;
      message.value = `${word}: ${counted(found.warningCount, "warning")}${word === "Read" ? "" : " left"}${
        open > 0 ? `, ${counted(open, "question")} open` : ""
      }.`;
    });
  }

  function putAway(): void {
    run.asked++;
    batch(() => {
      [bytes.value, reading.value, remembered.value, answers.value] = [null, null, null, null];
      [questions.value, broughtIn.value] = [[], null];
      [name.value, replace.value, busy.value, troubles.value, message.value] = ["", false, false, [], ""];
    });
  }

  return {
    shown,
    name,
    reading,
    remembered,
    questions,
    busy,
    replace,
    broughtIn,
    message,
    troubles,
    unsaved: computed(() => bytes.value !== null && broughtIn.value === null),
    show: (wanted) => (shown.value = wanted),
    choose: async (file) => {
      putAway();
      const turn = run.asked;
      if (sentSize(file.size) > limits.importBytes.value) {
        troubles.value = [serviceProblem("import-too-large", { file: file.name }).sentence];
        return;
      }
      if (/\.md$/i.test(file.name)) {
        troubles.value = [serviceProblem("notebook-brought-in", { file: file.name }).sentence];
        return;
      }
      [busy.value, name.value] = [true, file.name];
      const base64 = await encoded(file).catch(() => null);
      if (turn !== run.asked) return;
      if (base64 === null) {
        [busy.value, name.value] = [false, ""];
        troubles.value = [serviceProblem("import-not-readable", { file: file.name }).sentence];
        return;
      }
      bytes.value = base64;
      await read("Read");
    },
    rename: async (wanted) => {
      name.value = wanted;
      replace.value = false;
      await read("Read again");
    },
    answer: async (id, choice) => {
      const asked = questions.value.find(({ question }) => question.id === id);
      const chosen = asked?.question.choices[choice];
      if (asked === undefined || chosen === undefined) return;
      batch(() => {
        questions.value = questions.value.map((each) => (each === asked ? { ...each, chosen: choice } : each));
        answers.value = withAnswer(answers.value ?? reading.value?.answers ?? none, chosen);
      });
      await read("Read again");
    },
    askAgain: async () => {
      const { guarded, delimiter } = (answers.value ?? reading.value?.answers ?? none).read;
      batch(() => {
        questions.value = [];
        remembered.value = null;
        answers.value = {
          read: { ...(guarded === undefined ? {} : { guarded }), ...(delimiter === undefined ? {} : { delimiter }) },
          about: {},
        };
      });
      await read("Read again");
    },
    mayReplace: (wanted) => (replace.value = wanted),
    bringIn: async () => {
      if (bytes.value === null || run.taking) return;
      run.taking = true;
      // A name that was typed just now is being read with; what is brought in is what was read.
      await run.reading;
      busy.value = true;
      const file = { name: name.value, base64: bytes.value, answers: answers.value };
      const taken = settle(await api.take(file, replace.value));
      run.taking = false;
      batch(() => {
        busy.value = false;
        if (taken?.suggestion) broughtIn.value = { table: taken.file, suggestion: taken.suggestion };
        message.value = taken === null ? "Not brought in." : `${taken.file} is in the folder.`;
      });
    },
    putAway,
    offer: async (table) => {
      putAway();
      const turn = run.asked;
      const suggestion = settle(await api.suggest(table));
      if (suggestion !== null && turn === run.asked) broughtIn.value = { table, suggestion };
    },
    begin: async (file, text) => {
      const begun = settle(await api.begin(file, text));
      message.value = begun === null ? "Not begun." : `${begun.file} is begun.`;
      if (begun !== null) putAway();
      return begun?.file ?? null;
    },
    addTo: async (notebook) => {
      const suggestion = broughtIn.value?.suggestion;
      const data = suggestion === undefined ? null : settle(await api.open(notebook));
      if (data === null || suggestion === undefined) return null;
      const saved = settle(await api.save(notebook, withRecordsEntry(data, suggestion.entry), data.digest));
      if (saved !== null) putAway();
      return saved?.file ?? null;
    },
  };
}
