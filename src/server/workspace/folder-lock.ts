// One program at a time writes in a folder. The lock names a process by its number and when it began, so that a dead one holds nothing.
import { randomBytes } from "node:crypto";
import { link, readFile, rename, rm, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { kill, pid } from "node:process";

const NAME = ".thumbrule.lock";
const TRIES = 5;

type Holder = { readonly pid: number; readonly began: string | null; readonly claim: string };
export type FolderLock = {
  /** Number of the process that holds the folder in our place; null while nobody does but us. */
  readonly holder: () => Promise<number | null>;
  readonly release: () => Promise<void>;
};

/** When a process began, in ticks since the machine did, where the system tells. */
async function beganAt(process: number): Promise<string | null> {
  const line = await readFile(`/proc/${process}/stat`, "utf8").catch(() => null);
  // The name stands in brackets and may hold anything; the 20th field after it is the start.
  return line?.slice(line.lastIndexOf(")") + 2).split(" ")[19] ?? null;
}

function isRunning(process: number): boolean {
  try {
    kill(process, 0);
    return true;
  } catch (failure) {
    return (failure as NodeJS.ErrnoException).code === "EPERM";
  }
}

const isAlive = async ({ pid: process, began }: Holder): Promise<boolean> =>
  isRunning(process) && (began === null || (await beganAt(process)) === began);

/** Who a lock file names; null where there is none, or none that can be understood. */
async function holderIn(path: string): Promise<Holder | null> {
  try {
    const said = JSON.parse(await readFile(path, "utf8")) as Partial<Holder>;
    const { pid: process, began = null, claim } = said;
    return Number.isSafeInteger(process) && typeof claim === "string" ? { pid: process as number, began, claim } : null;
  } catch {
    return null;
  }
}

/** Puts a dead holder's lock out of the way; another's that came in between is put back. */
async function clearDead(path: string, dead: Holder | null, aside: string): Promise<void> {
  await rename(path, aside);
  const moved = await holderIn(aside);
  if (moved?.claim !== dead?.claim) await link(aside, path).catch(() => undefined);
  await rm(aside, { force: true });
}

/** Links the lock into place, or writes it where the disk knows no links; false where one stands there. */
async function placed(beside: string, path: string, own: Holder): Promise<boolean> {
  const codeOf = (failure: unknown) => (failure as NodeJS.ErrnoException).code ?? "";
  return link(beside, path)
    .catch((failure) => {
      if (!["EPERM", "ENOTSUP", "EOPNOTSUPP", "ENOSYS"].includes(codeOf(failure))) throw failure;
      return writeFile(path, JSON.stringify(own), { flag: "wx" });
    })
    .then(
      () => true,
      (failure) => {
        if (codeOf(failure) !== "EEXIST") throw failure;
        return false;
      },
    );
}

/** Takes the lock if nobody holds it who is alive. Linked into place whole, so that nobody reads half a lock. */
async function claimed(folder: string, own: Holder): Promise<boolean> {
  const path = join(folder, NAME);
  const beside = `${path}.${own.claim}`;
  await writeFile(beside, JSON.stringify(own), { flag: "wx" });
  try {
    for (let left = TRIES; left > 0; left--) {
      if (await placed(beside, path, own)) return true;
      const found = await holderIn(path);
      if (found !== null && (await isAlive(found))) return false;
      await clearDead(path, found, `${beside}.dead`).catch(() => undefined);
    }
    return false;
  } finally {
    await rm(beside, { force: true });
  }
}

/**
 * The lock of a folder, taken at once where it is free and again whenever its holder has gone. A folder that cannot be written to needs
 * none: what is tried there fails by itself.
 */
export function folderLock(folder: string): FolderLock {
  const path = join(folder, NAME);
  let own: Promise<Holder> | null = null;
  const self = () => {
    own ??= beganAt(pid).then((began) => ({ pid, began, claim: randomBytes(8).toString("hex") }));
    return own;
  };
  async function taken(): Promise<number | null> {
    const me = await self();
    const found = await holderIn(path);
    if (found?.claim === me.claim) return null;
    if (found !== null && (await isAlive(found))) return found.pid;
    const won = await claimed(folder, me).catch(() => null);
    return won === false ? ((await holderIn(path))?.pid ?? 0) : null;
  }
  let turn: Promise<unknown> = Promise.resolve();
  const holder = () => {
    const next = turn.then(taken);
    turn = next.catch(() => undefined);
    return next;
  };
  void holder().catch(() => undefined);
  return {
    holder,
    release: async () => {
      await turn;
      if ((await holderIn(path))?.claim === (await self()).claim) await rm(path, { force: true });
    },
  };
}
