// What runs in Node: the command line, the server's start, the benchmarks, the reference cases, the demo's maker.
import { defineConfig } from "vite";
import { plugins } from "./plugins.config.ts";

export default defineConfig({
  oxc: { jsx: { runtime: "automatic", importSource: "preact" } },
  plugins: plugins(),
  logLevel: "warn",
  ssr: { noExternal: ["arquero", "ajv", "fast-deep-equal"] },
  build: {
    ssr: true,
    outDir: "dist/node",
    emptyOutDir: true,
    target: "node20",
    minify: false,
    rolldownOptions: {
      input: {
        thumbrule: "src/cli/main.ts",
        start: "src/cli/start-main.ts",
        bench: "tests/bench/main.ts",
        cases: "tests/reference/main.ts",
        demo: "tests/demo/main.ts",
        "static-view": "src/app/static-view.tsx",
      },
      output: { entryFileNames: "[name].js", chunkFileNames: "part-[name].js" },
    },
  },
});
