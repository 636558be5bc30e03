import { createHash } from "node:crypto";

/** SHA-256 of bytes, in lower-case hexadecimal: what a save names as the version it was based on. */
export const digest = (bytes: Uint8Array): string => createHash("sha256").update(bytes).digest("hex");
