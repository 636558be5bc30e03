export * from "./app-files.ts";
export * from "./create-app.ts";
export * from "./middleware/security-headers.ts";
export * from "./start-server.ts";
export * from "./stop-on-signals.ts";
export * from "./workspace/open-workspace.ts";
export * from "./workspace/save-file.ts";
export * from "./workspace/workspace.ts";
