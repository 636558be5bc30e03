import type { Workspace } from "../workspace/workspace.ts";

/** GET /api/records: the record files of the folder, with the number of their tables and rows. */
export const getRecords = async (_: Request, workspace: Workspace): Promise<Response> =>
  Response.json({ tables: await workspace.records.list() });
