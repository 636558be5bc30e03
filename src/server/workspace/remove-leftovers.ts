// What a program that was killed left behind, and what was kept long enough: removed when a folder is opened.
import { lstat, readdir, rm } from "node:fs/promises";
import { join } from "node:path";
import { kill } from "node:process";
import { TEMPORARY } from "./temporary-path.ts";

const DAYS_KEPT = 30;
const DAY = 24 * 60 * 60 * 1000;
/** A temporary says which process wrote it; what was replaced says when. Both names begin with a dot, so they are neither listed nor served. */
const KEPT = /^\..+\.(\d{4}-\d\d-\d\d)\.[0-9a-f]{12}\.kept$/;

/** Name under which a file that is replaced stays beside it. */
export const keptName = (name: string, day: string, digest: string): string =>
  `.${name.slice(0, 200)}.${day}.${digest.slice(0, 12)}.kept`;

function isGone(process: number): boolean {
  try {
    kill(process, 0);
    return false;
  } catch (failure) {
    return (failure as NodeJS.ErrnoException).code === "ESRCH";
  }
}

/** Why a file may go, null if it stays. */
function reasonToGo(name: string, now: number): string | null {
  const process = TEMPORARY.exec(name)?.[1];
  if (process !== undefined && isGone(Number(process))) return "left by a program that was stopped while it saved";
  const day = KEPT.exec(name)?.[1];
  return day !== undefined && now - Date.parse(day) > DAYS_KEPT * DAY ? `kept for ${DAYS_KEPT} days` : null;
}

/** Removes what is surely ours and no longer needed from some folders, and says each. What cannot be removed stays. */
export async function removeLeftovers(
  folders: readonly string[],
  now: number,
  say: (line: string) => void,
): Promise<void> {
  for (const folder of folders)
    for (const name of await readdir(folder).catch(() => [])) {
      const why = reasonToGo(name, now);
      const path = join(folder, name);
      if (why === null || !(await lstat(path).catch(() => null))?.isFile()) continue;
      await rm(path)
        .then(() => say(`Removed ${path}: ${why}.`))
        .catch(() => undefined);
    }
}
