// The readers: one script and one style sheet, put into every dated copy. One script opens reasons on paper, one turns dials
// with the engine, one draws pictures anew as well; a copy carries the smallest that will do.
import { build, defineConfig, type InlineConfig, type Plugin } from "vite";
import { plugins } from "./plugins.config.ts";

/** Only what a reader calls is put in: packages that read files and Markdown stay out with the modules that use them. */
const sideEffects = [
  { test: /\.css$|[\\/]app[\\/][\w-]*reader\.(html|tsx?)/, sideEffects: true },
  { test: /./, sideEffects: false },
];

const reader = (input: string, name: string, first: boolean): InlineConfig => ({
  root: "src/app",
  base: "./",
  oxc: { jsx: { runtime: "automatic", importSource: "preact" } },
  plugins: plugins(),
  logLevel: "warn",
  build: {
    outDir: "../../dist/reader",
    emptyOutDir: first,
    target: "es2023",
    modulePreload: false,
    assetsInlineLimit: 1e9,
    cssCodeSplit: false,
    chunkSizeWarningLimit: 700,
    rolldownOptions: {
      input: `src/app/${input}`,
      treeshake: { moduleSideEffects: sideEffects },
      output: { codeSplitting: false, entryFileNames: `${name}.js`, assetFileNames: "reader[extname]" },
    },
  },
});

const others: Plugin = {
  name: "other-readers",
  closeBundle: async () => {
    for (const name of ["turning-reader", "drawing-reader"])
      await build({ configFile: false, ...reader(`${name}.ts`, name, false) });
  },
};

const still = reader("reader.html", "reader", true);
export default defineConfig({ ...still, plugins: [...plugins(), others] });
