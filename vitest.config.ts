// Two projects: everything that runs in Node, and the components in a real browser. Journeys drive a browser from Node.
import { playwright } from "@vitest/browser-playwright";
import { defineConfig } from "vitest/config";
import { plugins } from "./plugins.config.ts";
import { BROWSER_FLAGS, foundBrowser } from "./tests/support/browser.ts";

const browser = foundBrowser();
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
        test: {
          name: "browser",
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
