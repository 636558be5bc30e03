export * from "./expression.ts";
