// What can go wrong between the page and the folder. Code and facts are the truth; the sentence is made here and nowhere else.

type Facts = {
  "other-host": { port: number };
  "other-site": Record<never, never>;
  "token-missing": Record<never, never>;
  "token-wrong": Record<never, never>;
  "not-here": Record<never, never>;
  "method-not-allowed": Record<never, never>;
  "not-json": Record<never, never>;
  "wrong-shape": { key: string };
  "body-too-large": { limit: string };
  "file-missing": { file: string };
  "file-name-refused": Record<never, never>;
  "file-not-text": { file: string };
  "file-too-large": { file: string; limit: string };
  "stale-edit": { file: string };
  "disk-full": { file: string };
  "not-permitted": { file: string };
  "name-too-long": { file: string };
  "folder-gone": { file: string };
  "not-saved": { file: string; reason: string };
  "folder-held": { holder: number };
  "date-missing": Record<never, never>;
  "table-name-refused": Record<never, never>;
  "table-exists": { file: string };
  "import-too-large": { file: string };
  "import-not-readable": { file: string };
  "notebook-brought-in": { file: string };
  "notebook-name-refused": Record<never, never>;
  "notebook-exists": { file: string };
  "fault-of-ours": { id: string };
};

export type ServiceProblemCode = keyof Facts;

/** A problem outside a notebook: no place, but a code and a sentence. */
export type ServiceProblem = { readonly code: ServiceProblemCode; readonly sentence: string };

/** The sentence of each code: what is so, what to do. */
export const serviceProblems: { readonly [C in ServiceProblemCode]: (facts: Facts[C]) => string } = {
  "other-host": ({ port }) => `This answers at 127.0.0.1:${port} and localhost:${port} only.`,
  "other-site": () => "This was asked by another site, and only our own page may ask.",
  "token-missing": () =>
    "This page has not been opened with its full address. Open the address that was printed when the program started.",
  "token-wrong": () => "The address is not the one that was printed at this start. Open the printed address.",
  "not-here": () => "There is nothing at this address.",
  "method-not-allowed": () => "This address does not take such a request.",
  "not-json": () => "The request is not JSON in UTF-8.",
  "wrong-shape": ({ key }) => `The request does not have the right parts (${key}).`,
  "body-too-large": ({ limit }) => `The request is larger than ${limit}.`,
  "file-missing": ({ file }) => `There is no ${file} in this folder.`,
  "file-name-refused": () => "This is not the name of a file in this folder.",
  "file-not-text": ({ file }) => `${file} is not text in UTF-8. Save it as UTF-8 in a text editor and open it again.`,
  "file-too-large": ({ file, limit }) => `${file} is larger than ${limit}.`,
  "stale-edit": ({ file }) =>
    `${file} was changed by something else since it was opened here. Both versions are shown; nothing was written.`,
  "disk-full": ({ file }) =>
    `${file} was not saved: the disk is full. Your text is still here; make room and save again.`,
  "not-permitted": ({ file }) =>
    `${file} was not saved: it may not be written to. Your text is still here; allow writing and save again.`,
  "name-too-long": ({ file }) => `${file} was not saved: its name is too long for this disk.`,
  "folder-gone": ({ file }) =>
    `${file} was not saved: its folder is gone. Your text is still here; put the folder back and save again.`,
  "not-saved": ({ file, reason }) => `${file} was not saved (${reason}). Your text is still here; try again.`,
  "folder-held": ({ holder }) =>
    `Another program (process ${holder}) works in this folder, so it is only read here. Close that one, or work there.`,
  "date-missing": () => "A dated copy needs its date, as year-month-day.",
  "table-name-refused": () =>
    "The name of a table ends in .csv, .tsv, .txt, .xlsx or .ods and has no slash, backslash or colon. Give it another name.",
  "table-exists": ({ file }) =>
    `${file} is there already and holds something else. Replace it, or give this one another name; nothing was written.`,
  "import-too-large": ({ file }) =>
    `${file} is larger than 47 MB, the most that can be brought in from the page. Copy it into the folder called records; it is read from there.`,
  "import-not-readable": ({ file }) =>
    `${file} could not be read. A folder cannot be brought in; choose one file, or a copy of it.`,
  "notebook-brought-in": ({ file }) =>
    `${file} is a notebook, not a table. Copy it into the folder that is open here; it then stands in the contents.`,
  "notebook-name-refused": () =>
    "The name of a notebook ends in .md and has no slash, backslash or colon. Give it another name.",
  "notebook-exists": ({ file }) => `There is a notebook called ${file} already. Give this one another name.`,
  "fault-of-ours": ({ id }) => `This is a fault of ours (${id}). What you wrote is still in the page.`,
};

/** The problem of a code with its sentence. */
export function serviceProblem<C extends ServiceProblemCode>(code: C, facts: Facts[C]): ServiceProblem {
  return { code, sentence: serviceProblems[code](facts) };
}
