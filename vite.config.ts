// The page, served by the loopback server out of dist/app.
import { defineConfig } from "vite";
import { plugins } from "./plugins.config.ts";

export default defineConfig({
  root: "src/app",
  base: "./",
  oxc: { jsx: { runtime: "automatic", importSource: "preact" } },
  plugins: plugins(),
  logLevel: "warn",
  build: {
    outDir: "../../dist/app",
    emptyOutDir: true,
    target: "es2023",
    chunkSizeWarningLimit: 700,
    modulePreload: { polyfill: false },
    assetsInlineLimit: 0,
    license: true,
    manifest: "files.json",
    // Modules of core do nothing when they are imported, so what the page does not use of them stays out of it.
    rolldownOptions: { treeshake: { moduleSideEffects: [{ test: /[\\/]src[\\/]core[\\/]/, sideEffects: false }] } },
  },
});
