// The Vite plugins of every build and test: grammars and schemas become modules as they are imported, so nothing
// generated lies on disk; arquero is kept from compiling text into code (the policy of the page forbids it).
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { lezer } from "@lezer/generator/rollup";
import Ajv from "ajv/dist/2020.js";
import standalone from "ajv/dist/standalone/index.js";
import type { Plugin } from "vite";

/** `import { parser } from "./sentence.grammar"`: an LR parser out of a grammar file. */
export const grammar = (): Plugin => ({ ...(lezer() as Plugin), enforce: "pre" });

// A name that is no file's, ending in .js so that the development server resolves what the module imports.
const VALIDATOR = { before: "\0validator:", after: ".js" } as const;

/** `import validate from "…/wood.schema.json?validator"`: a compiled validator, no code made at run time. */
export function validators(): Plugin {
  return {
    name: "json-schema-validators",
    enforce: "pre",
    async resolveId(source, importer) {
      if (!source.endsWith("?validator")) return null;
      const found = await this.resolve(source.slice(0, -"?validator".length), importer, { skipSelf: true });
      return found ? `${VALIDATOR.before}${found.id}${VALIDATOR.after}` : null;
    },
    load(id) {
      if (!id.startsWith(VALIDATOR.before)) return null;
      const file = id.slice(VALIDATOR.before.length, -VALIDATOR.after.length);
      this.addWatchFile(file);
      const ajv = new Ajv({
        code: { source: true, esm: true, lines: true },
        strict: true,
        allErrors: true,
        allowUnionTypes: true,
        formats: { date: true }, // A word for people and other tools: how a date is written is the importer's matter.
      });
      ajv.addVocabulary(["x-kind", "x-unit", "x-typicalRange", "x-uncertainty"]);
      const write = (standalone as unknown as { default?: typeof standalone }).default ?? standalone;
      const code = write(ajv, ajv.compile(JSON.parse(readFileSync(file, "utf8")))).replace(
        /const (\w+) = require\("(ajv\/dist\/runtime\/\w+)"\)\.default/g,
        'import $1_ from "$2.js"; const $1 = $1_.default ?? $1_',
      );
      if (/\brequire\(/.test(code)) this.error(`a require is left in the validator of ${file}`);
      return { code, map: null };
    },
  };
}

const COMPILING = /[\\/]arquero[\\/]src[\\/](expression[\\/](compile|compare)|util[\\/]unroll)\.js$/;
const shim = fileURLToPath(new URL("./src/core/columns/closure-function.ts", import.meta.url));

/** Three modules of arquero call the global `Function`; an import of that name shadows it there. */
export function arqueroWithoutCode(): Plugin {
  const seen = new Set<string>();
  return {
    name: "arquero-without-code",
    enforce: "pre",
    transform(code, id) {
      const file = id.split("?")[0] ?? id;
      if (!COMPILING.test(file)) return null;
      if (!/\bFunction\(/.test(code)) this.error(`arquero changed: no Function( in ${file}`);
      seen.add(file);
      return { code: `import { closureFunction as Function } from ${JSON.stringify(shim)};\n${code}`, map: null };
    },
    generateBundle(_, bundle) {
      if (seen.size && seen.size !== 3) this.error(`arquero changed: ${seen.size} of 3 modules rewritten`);
      for (const chunk of Object.values(bundle))
        if (chunk.type === "chunk" && /(?:[^\w.$]|^)(?:new\s+)?Function\s*\(/.test(chunk.code))
          this.error(`Function( left in ${chunk.fileName}`);
    },
  };
}

/** All of them, in the order in which they must run. */
export const plugins = (): Plugin[] => [arqueroWithoutCode(), grammar(), validators()];
