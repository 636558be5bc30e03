// Two projects: everything that runs in Node, and the components in a real browser. Journeys drive a browser from Node.
import { playwright } from "@vitest/browser-playwright";
import { defineConfig } from "vitest/config";
import { plugins } from "./plugins.config.ts";
import { BROWSER_FLAGS, foundBrowser } from "./tests/support/browser.ts";

const browser = foundBrowser();
// Named, so that a fresh machine has them packed before the first test rather than reloading in the middle of one;
// arquero is left out: our plugin must see its modules one by one.
const optimizeDeps = {
  include: [
    "preact",
    "preact/hooks",
    "preact/jsx-runtime",
    "preact/jsx-dev-runtime",
    "preact-render-to-string",
    "@preact/signals",
    "axe-core",
    "@codemirror/autocomplete",
    "@codemirror/commands",
    "@codemirror/language",
    "@codemirror/lint",
    "@codemirror/state",
    "@codemirror/view",
    "@lezer/common",
    "@lezer/highlight",
    "@lezer/lr",
    "@observablehq/plot",
    "@observablehq/runtime",
    "@uwdata/flechette",
    "acorn",
    "ajv/dist/runtime/ucs2length.js",
    "mdast-util-from-markdown",
    "mdast-util-gfm-table",
    "micromark-extension-gfm-table",
    "papaparse",
    "yaml",
  ],
  exclude: ["arquero"],
};
const jsx = { jsx: { runtime: "automatic", importSource: "preact" } } as const;

export default defineConfig({
  test: {
    maxWorkers: 2,
    projects: [
      {
        plugins: plugins(),
        oxc: jsx,
        test: {
          name: "unit",
          include: ["tests/**/*.test.ts"],
          exclude: ["tests/app/**/*.browser.test.tsx", "tests/journeys/**"],
          environment: "node",
          testTimeout: 60_000,
          server: { deps: { inline: ["arquero"] } },
          execArgv: ["--disallow-code-generation-from-strings"],
        },
      },
      {
        plugins: plugins(),
        oxc: jsx,
        test: {
          name: "journeys",
          include: ["tests/journeys/**/*.test.ts"],
          environment: "node",
          testTimeout: 60_000,
          hookTimeout: 60_000,
          fileParallelism: false,
        },
      },
      {
        plugins: plugins(),
        oxc: jsx,
        optimizeDeps,
        test: {
          name: "browser",
          globalSetup: ["tests/support/demo-in-node.ts"],
          server: { deps: { inline: ["arquero"] } },
          include: ["tests/app/**/*.browser.test.tsx"],
          browser: {
            enabled: true,
            headless: true,
            screenshotFailures: false,
            api: { host: "127.0.0.1" },
            instances: [{ browser: "chromium" }],
            provider: playwright({
              launchOptions: {
                executablePath: browser.path,
                args: [...BROWSER_FLAGS],
                env: { ...process.env, ...browser.env } as Record<string, string>,
              },
            }),
          },
        },
      },
    ],
  },
});
