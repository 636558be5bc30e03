export * from "./static-view.tsx";
