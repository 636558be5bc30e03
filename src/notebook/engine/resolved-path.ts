// The place of a file that a notebook names, counted from the folder of the workspace.

/** "records/tops.csv" named by "notebooks/a.md" -> "notebooks/records/tops.csv"; `..` goes up, and above the top it stays as written. */
export function resolvedPath(notebook: string, file: string): string {
  if (file.startsWith("/")) return file;
  const parts = notebook.split("/").slice(0, -1);
  for (const part of file.split("/")) {
    if (part === "." || part === "") continue;
    if (part === ".." && parts.length > 0 && parts.at(-1) !== "..") parts.pop();
    else parts.push(part);
  }
  return parts.join("/");
}
