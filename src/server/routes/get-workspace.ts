import type { Workspace } from "../workspace/workspace.ts";

/** GET /api/workspace: the notebooks of the folder. */
export const getWorkspace = async (_: Request, workspace: Workspace): Promise<Response> =>
  Response.json({ notebooks: await workspace.notebooks() });
