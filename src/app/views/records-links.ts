import { createContext } from "preact";
import type { recordsAddress } from "../state/records-address.ts";

/** The link to a place in the records. */
export type RecordsLink = typeof recordsAddress;

/** How records are linked to from a notebook; null in a dated copy, which has no place to edit them. */
export const RecordsLinks = createContext<RecordsLink | null>(null);
