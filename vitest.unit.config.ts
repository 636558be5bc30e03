// The unit project alone, for breaking the code on purpose: `npm run mutants -- --mutate 'src/core/numerics/**'`.
import { defineConfig } from "vitest/config";
import { plugins } from "./plugins.config.ts";

export default defineConfig({
  plugins: plugins(),
  oxc: { jsx: { runtime: "automatic", importSource: "preact" } },
  test: {
    include: ["tests/core/**/*.test.ts"],
    environment: "node",
    testTimeout: 60_000,
    server: { deps: { inline: ["arquero"] } },
  },
});
