// A disk on which the n-th operation of a save goes wrong. Every operation counts, those of open files too.
import type { FileHandle } from "node:fs/promises";
import * as files from "node:fs/promises";

export const FAULTS = [
  "EIO",
  "ENOSPC",
  "EIO midway",
  "killed before",
  "killed midway",
  "killed after",
  "short write",
] as const;
export type Fault = (typeof FAULTS)[number];
type Call = (...given: unknown[]) => Promise<unknown>;

export type FaultyFiles = {
  readonly disk: typeof files;
  /** The operations that were begun, in their order. */
  readonly begun: string[];
  /** Comes when the program was killed: the operation never returns. */
  readonly killed: Promise<"killed">;
  /** Closes what a killed program left open. */
  readonly release: () => Promise<void>;
};

/** The disk with `fault` at its n-th operation (the first is 1; 0: nowhere). "Midway" half of a write is done first. */
export function faultyFiles(n: number, fault: Fault): FaultyFiles {
  const begun: string[] = [];
  const handles: FileHandle[] = [];
  let die: (how: "killed") => void = () => undefined;
  const killed = new Promise<"killed">((resolve) => {
    die = resolve;
  });
  const never = () => {
    die("killed");
    return new Promise<never>(() => undefined);
  };
  const failing = (code: string) => Promise.reject(Object.assign(new Error(code), { code }));

  /** One operation: `whole` does it, `half` does half of it where there is such a thing. */
  async function operation(name: string, whole: () => Promise<unknown>, half: (() => Promise<unknown>) | null) {
    begun.push(name);
    if (begun.length !== n) return whole();
    if (fault === "short write") return (name === "write" && half ? half : whole)();
    if (fault === "killed after") {
      await whole();
      return never();
    }
    if (fault.endsWith("midway")) await half?.();
    // What could not be closed is closed all the same, as on a real disk.
    if (name === "close") await whole();
    return fault.startsWith("killed") ? never() : failing(fault.slice(0, 3) === "EIO" ? "EIO" : fault);
  }

  const halfOf = (handle: FileHandle, name: string, [content, at, length, place = null]: unknown[]) => {
    if (name === "write")
      return () =>
        handle.write(content as Uint8Array, at as number, Math.floor((length as number) / 2), place as number | null);
    if (name === "writeFile")
      return () => handle.writeFile((content as string).slice(0, (content as string).length / 2));
    return null;
  };
  const watched = (handle: FileHandle): FileHandle =>
    new Proxy(handle, {
      get: (target, key) => {
        const value = Reflect.get(target, key) as unknown;
        if (typeof value !== "function") return value;
        return (...given: unknown[]) =>
          operation(String(key), () => (value as Call).apply(target, given), halfOf(target, String(key), given));
      },
    });

  const disk = new Proxy(files, {
    get:
      (target, key) =>
      (...given: unknown[]) =>
        operation(
          String(key),
          async () => {
            const made = await (Reflect.get(target, key) as Call)(...given);
            if (key !== "open") return made;
            handles.push(made as FileHandle);
            return watched(made as FileHandle);
          },
          null,
        ),
  });
  return {
    disk,
    begun,
    killed,
    release: async () => void (await Promise.all(handles.map((handle) => handle.close()))),
  };
}
