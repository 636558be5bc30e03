// A machine of invented files for the tests of the command line.
import type { Surface } from "../../src/cli/surface.ts";

export type SmallSurface = Surface & { readonly written: Map<string, string> };

/** A surface over texts by path; lines are what stands on stdin. */
export function smallSurface(files: Readonly<Record<string, string>>, lines: readonly string[] = []): SmallSurface {
  const written = new Map<string, string>();
  return {
    version: "test",
    written,
    read: async (path) =>
      Object.hasOwn(files, path)
        ? new TextEncoder().encode(files[path])
        : written.has(path)
          ? new TextEncoder().encode(written.get(path))
          : null,
    write: async (path, text) => {
      written.set(path, text);
      return { ok: true };
    },
    stdin: async function* () {
      yield* lines;
    },
    built: async (name) => (name.endsWith(".js") ? "export {};" : name.endsWith(".css") ? "p { margin: 0 }" : null),
    staticView: async () => (view) => `<p>${view.kind}</p>`,
  };
}
