// What both import routes read from a request: a file's bytes, its place in the folder, and the answers that hold for it.
import { limits } from "../../core/base/index.ts";
import type { ImportAnswers, ReadResult, TableDescription } from "../../core/records/index.ts";
import { descriptionFromJson, readRecords } from "../../core/records/index.ts";
import { descriptionPath } from "../../notebook/engine/index.ts";
import type { Workspace } from "../workspace/workspace.ts";
import { exactText } from "./notebook-file.ts";
import type { Shape } from "./request-parts.ts";
import { jsonBody } from "./request-parts.ts";

const isObject = (value: unknown): boolean => typeof value === "object" && value !== null && !Array.isArray(value);
const isText = (value: unknown, most: number) => typeof value === "string" && value.length > 0 && value.length <= most;
const NAME_LENGTH = 255;

/** The part of the description that answers are, as a description: its own schema says whether it is one. */
const isAnswer = (key: "read" | "about") => (value: unknown) =>
  value === null ||
  (isObject(value) &&
    (key === "read" || Object.keys(value as object).every((name) => name === "repeats" || name === "oneRowPer")) &&
    descriptionFromJson(JSON.stringify(key === "read" ? { read: value } : value)).ok);

/** Whether a text is base64 in its one full form; only the last four characters can be written in several. */
const isBase64 = (text: string): boolean =>
  text.length % 4 === 0 &&
  /^[A-Za-z0-9+/]*={0,2}$/.test(text) &&
  Buffer.from(text.slice(-4), "base64").toString("base64") === text.slice(-4);

/** `options`, `about`: null where what is remembered holds. */
export const importShape: Shape = {
  name: (value) => isText(value, NAME_LENGTH) && !/[/\p{Surrogate}]/u.test(String(value)),
  base64: (value) => typeof value === "string" && isBase64(value),
  options: isAnswer("read"),
  about: isAnswer("about"),
};

export type ImportRequest = {
  readonly file: string;
  readonly bytes: Uint8Array;
  readonly given: ImportAnswers | null;
  readonly replace: boolean;
};
type Read = { readonly ok: true; readonly value: ImportRequest } | { readonly ok: false; readonly answer: Response };

/** The body of a request to read or bring in a file. */
export async function importRequest(request: Request, shape: Shape): Promise<Read> {
  const body = await jsonBody(request, shape, limits.importBytes.value);
  if (!body.ok) return body;
  const { name, base64, options, about, replace } = body.value;
  const given =
    options === null && about === null ? null : ({ read: options ?? {}, about: about ?? {} } as ImportAnswers);
  const bytes = new Uint8Array(Buffer.from(String(base64), "base64"));
  return { ok: true, value: { file: `records/${name}`, bytes, given, replace: replace === true } };
}

/** A file as read, and the description that its answers are kept in. `from`: whose answers they were; `text`: of the description to go on from. */
export type Recalled = {
  readonly result: ReadResult;
  readonly answers: ImportAnswers;
  readonly from: string | null;
  readonly text: string | null;
};

const answersOf = ({ read = {}, repeats, oneRowPer }: TableDescription): ImportAnswers => ({
  read,
  about: { ...(repeats === undefined ? {} : { repeats }), ...(oneRowPer === undefined ? {} : { oneRowPer }) },
});
/** Names of the columns, by which a later file of the same shape is known. */
export const shapeOf = ({ tables }: ReadResult): readonly string[] => tables[0]?.columns.map(({ name }) => name) ?? [];
/** Whether two lists hold the same names; objects do not keep the order of names that are numbers. */
const isSame = (a: readonly string[], b: readonly string[]) =>
  a.length === b.length && [...a].sort().join("\n") === [...b].sort().join("\n");

type Described = { readonly path: string; readonly text: string; readonly description: TableDescription };
async function describedAt(workspace: Workspace, path: string): Promise<Described | null> {
  const bytes = await workspace.read(path);
  const text = bytes === null ? null : exactText(bytes);
  const description = text === null ? null : descriptionFromJson(text);
  return text !== null && description?.ok ? { path, text, description: description.value } : null;
}

const HEAD = 1024 * 1024;
const LF = 10;
/** Enough of a file to know its columns by: whole lines of a long text, all of a workbook. */
function headOf(bytes: Uint8Array): Uint8Array {
  const isPacked = bytes[0] === 0x50 && bytes[1] === 0x4b;
  return isPacked || bytes.length <= HEAD ? bytes : bytes.subarray(0, bytes.lastIndexOf(LF, HEAD) + 1 || HEAD);
}

/** The description of the file itself; without one, that of a file of the same shape: last month's export. */
async function remembered(workspace: Workspace, { file, bytes }: ImportRequest): Promise<Described | null> {
  const own = descriptionPath(file);
  const paths = await workspace.descriptions();
  if (paths.includes(own)) return describedAt(workspace, own);
  if (paths.length === 0) return null;
  const head = headOf(bytes);
  const plain = shapeOf(await readRecords(head, file));
  for (const path of [...paths].sort().reverse()) {
    const found = await describedAt(workspace, path);
    const fields = Object.keys(found?.description.columns ?? {});
    if (found === null || fields.length === 0) continue;
    const { read } = found.description;
    const names = read?.encoding === undefined ? plain : shapeOf(await readRecords(head, file, read));
    if (isSame(fields, names)) return found;
  }
  return null;
}

/** The file read with the answers given, or with those that are remembered. */
export async function recalled(workspace: Workspace, asked: ImportRequest): Promise<Recalled> {
  const found = await remembered(workspace, asked);
  const answers = asked.given ?? (found === null ? { read: {}, about: {} } : answersOf(found.description));
  return {
    result: await readRecords(asked.bytes, asked.file, answers.read),
    answers,
    from: asked.given === null && found !== null ? found.path : null,
    text: found?.text ?? null,
  };
}
