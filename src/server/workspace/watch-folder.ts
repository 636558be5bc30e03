// Changes from outside: a file counts as changed once its size has been still, so that half a file is never taken for a whole one.
import { relative, sep } from "node:path";
import { watch } from "chokidar";

/** Watches the notebooks and records of a folder; the function given back stops it. */
export function watchFolder(folder: string, changed: (file: string) => void): () => Promise<void> {
  const watcher = watch(folder, {
    depth: 2,
    ignoreInitial: true,
    ignored: (path) =>
      relative(folder, path)
        .split(sep)
        .some((part) => part.startsWith(".") && part !== "." && part !== ".."),
    awaitWriteFinish: { stabilityThreshold: 100, pollInterval: 50 },
  });
  const tell = (path: string) => changed(relative(folder, path).split(sep).join("/"));
  watcher
    .on("add", tell)
    .on("change", tell)
    .on("unlink", tell)
    .on("error", () => undefined);
  return () => watcher.close();
}
