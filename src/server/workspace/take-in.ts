// Files taken into the folder, all together or none: nothing that lies there is written over unasked, and what is replaced is kept beside.
import * as files from "node:fs/promises";
import { basename, dirname, join, sep } from "node:path";
import { digest } from "./digest.ts";
import { keptName } from "./remove-leftovers.ts";
import { flushFolder, type SavingFiles, writeWhole } from "./save-file.ts";
import { temporaryPath } from "./temporary-path.ts";

/** The operations of taking in, as an argument, so that tests make each one fail. */
export type TakingFiles = SavingFiles & Pick<typeof files, "copyFile" | "link" | "mkdir">;

/** `replaces`: digest of the file that may be written over; null where there must be none. */
export type FileToTake = { readonly name: string; readonly bytes: Uint8Array; readonly replaces: string | null };

export type TakenIn =
  | { readonly taken: true }
  | { readonly taken: false; readonly because: "exists"; readonly file: string }
  | { readonly taken: false; readonly because: "held"; readonly holder: number }
  | { readonly taken: false; readonly because: "failed"; readonly file: string; readonly error: NodeJS.ErrnoException };

const hasCode = (failure: unknown, ...codes: readonly string[]) =>
  codes.includes((failure as NodeJS.ErrnoException).code ?? "");

async function bytesAt(disk: TakingFiles, path: string): Promise<Uint8Array | null> {
  try {
    return await disk.readFile(path);
  } catch (failure) {
    if (hasCode(failure, "ENOENT")) return null;
    throw failure;
  }
}

/** The folder of a file, made if it is not there; never one that a link puts outside. */
async function folderOf(disk: TakingFiles, home: string, name: string): Promise<string> {
  const wanted = dirname(join(home, ...name.split("/")));
  await disk.mkdir(wanted, { recursive: true });
  const [real, root] = [await disk.realpath(wanted), await disk.realpath(home)];
  if (real !== root && !real.startsWith(root + sep)) throw Object.assign(new Error("outside"), { code: "EPERM" });
  return real;
}

const NO_LINKS = ["EPERM", "ENOTSUP", "EOPNOTSUPP", "ENOSYS", "EXDEV", "EMLINK"];
const taken = () => Object.assign(new Error("exists"), { code: "EEXIST" });

/** A second name for what is about to be replaced: the old file itself where the disk knows links. */
async function keep(disk: TakingFiles, path: string, kept: string): Promise<void> {
  try {
    await disk.link(path, kept);
  } catch (failure) {
    if (hasCode(failure, "EEXIST")) return;
    if (!hasCode(failure, ...NO_LINKS)) throw failure;
    await disk.copyFile(path, kept);
  }
}

/** Gives new bytes a second name that must be free, then lets go of the first. On a disk without links the name is looked at first. */
async function putNew(disk: TakingFiles, from: string, to: string): Promise<void> {
  try {
    await disk.link(from, to);
  } catch (failure) {
    if (!hasCode(failure, ...NO_LINKS)) throw failure;
    if ((await bytesAt(disk, to)) !== null) throw taken();
    await disk.rename(from, to);
    return;
  }
  // What cannot be removed now goes when the folder is opened next.
  await disk.rm(from, { force: true }).catch(() => undefined);
}

/** `path`: where it will lie, behind any link; `replaces` as wanted; `kept`: the name under which the old bytes stay. */
type Placed = Omit<FileToTake, "bytes"> & {
  readonly path: string;
  readonly temporary: string;
  readonly kept: string;
};

async function writtenBeside(
  disk: TakingFiles,
  folder: string,
  file: FileToTake,
  today: string,
): Promise<Placed | null> {
  const { name, bytes, replaces } = file;
  const named = join(folder, basename(name));
  const before = await bytesAt(disk, named);
  if (before !== null && digest(before) === digest(bytes)) return null;
  if ((before === null ? null : digest(before)) !== replaces) throw taken();
  const path = before === null ? named : await disk.realpath(named);
  const beside = (text: string) => join(dirname(path), text);
  const temporary = temporaryPath(path);
  const kept = beside(keptName(basename(path), today, replaces ?? ""));
  try {
    await writeWhole(disk, temporary, bytes, 0o644);
  } catch (failure) {
    await disk.rm(temporary, { force: true }).catch(() => undefined);
    throw failure;
  }
  return { name, replaces, path, temporary, kept };
}

async function putInPlace(disk: TakingFiles, { path, temporary, kept, replaces }: Placed): Promise<void> {
  if (replaces === null) return putNew(disk, temporary, path);
  await keep(disk, path, kept);
  const now = await bytesAt(disk, path);
  if (now === null || digest(now) !== replaces) throw taken();
  await disk.rename(temporary, path);
}

/**
 * Takes files into the folder in their order. All are written beside and flushed before the first gets its name, so that a crash in between
 * leaves the first of them whole and alone, or all. When anything fails, those that had their names already are put back as they were.
 * home: the folder; names: safe ones inside it. today: for the name under which a replaced file is kept.
 */
export async function takeIn(
  home: string,
  wanted: readonly FileToTake[],
  today: string,
  disk: TakingFiles = files,
): Promise<TakenIn> {
  const placed: Placed[] = [];
  const done: Placed[] = [];
  let at = wanted[0]?.name ?? "";
  try {
    for (const file of wanted) {
      at = file.name;
      const beside = await writtenBeside(disk, await folderOf(disk, home, at), file, today);
      if (beside !== null) placed.push(beside);
    }
    for (const each of placed) {
      at = each.name;
      await putInPlace(disk, each);
      done.push(each);
    }
    for (const folder of new Set(placed.map(({ path }) => dirname(path)))) await flushFolder(disk, folder);
  } catch (failure) {
    for (const { path, kept, replaces } of done.reverse())
      await (replaces === null ? disk.rm(path, { force: true }) : disk.rename(kept, path)).catch(() => undefined);
    for (const { temporary } of placed) await disk.rm(temporary, { force: true }).catch(() => undefined);
    return hasCode(failure, "EEXIST")
      ? { taken: false, because: "exists", file: at }
      : { taken: false, because: "failed", file: at, error: failure as NodeJS.ErrnoException };
  }
  return { taken: true };
}
