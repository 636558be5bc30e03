// The script of a dated copy without dials: the copy reads without it; on paper it opens the reasons.
import "./styles/reader.css";
import { openForPrint } from "./open-for-print.ts";

export const reader = openForPrint;
reader(window);
