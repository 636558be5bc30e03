// Before the browser's tests: the demo notebook as Node computes it, handed to them by name.
import { readFile } from "node:fs/promises";
import type { TestProject } from "vitest/node";
import { demoFindings } from "./demo-findings.ts";

declare module "vitest" {
  export interface ProvidedContext {
    readonly demoInNode: string;
  }
}

const read = (path: string) => readFile(new URL(`../../notebooks/${path}`, import.meta.url)).catch(() => null);

export default async function demoInNode(project: TestProject): Promise<void> {
  project.provide("demoInNode", await demoFindings(read, setImmediate));
}
