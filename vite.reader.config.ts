// The reader: the views alone, one script and one style sheet, put into every dated copy.
import { defineConfig } from "vite";
import { plugins } from "./plugins.config.ts";

export default defineConfig({
  root: "src/app",
  base: "./",
  oxc: { jsx: { runtime: "automatic", importSource: "preact" } },
  plugins: plugins(),
  logLevel: "warn",
  build: {
    outDir: "../../dist/reader",
    emptyOutDir: true,
    target: "es2023",
    modulePreload: false,
    assetsInlineLimit: 1e9,
    cssCodeSplit: false,
    rolldownOptions: {
      input: "src/app/reader.html",
      output: { codeSplitting: false, entryFileNames: "reader.js", assetFileNames: "reader[extname]" },
    },
  },
});
