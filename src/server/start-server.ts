// Opens the port: 127.0.0.1 and nothing else, with limits on what a connection may cost.
import { randomBytes } from "node:crypto";
import { createServer, type Server } from "node:http";
import type { AddressInfo } from "node:net";
import { getRequestListener } from "@hono/node-server";
import { appFiles } from "./app-files.ts";
import { boundedConnections } from "./bounded-connections.ts";
import type { App } from "./create-app.ts";
import { createApp } from "./create-app.ts";
import { openWorkspace, type WorkspaceOptions } from "./workspace/open-workspace.ts";
import type { Workspace } from "./workspace/workspace.ts";

export type ServerOptions = Omit<WorkspaceOptions, "watch"> & {
  /** A free one is taken when none is given. */
  readonly port?: number;
  /** Folder of the built page. */
  readonly appFolder: string;
  readonly log: (line: string) => void;
};

export type RunningServer = {
  readonly port: number;
  /** The address to print: it carries the start token. */
  readonly url: string;
  /** Finishes writing, answers what is under way, closes. Done within two seconds. */
  readonly close: () => Promise<void>;
};

const secret = () => randomBytes(32).toString("base64url");
const LIMITS = { headers: 10_000, body: 60_000, idle: 5_000, most: 64, headerBytes: 16 * 1024, farewell: 1_000 };

/** Answers the notebook that opens first once, before anybody asks, so that its page finds it ready. What fails is said when it is asked for. */
async function answerAhead(workspace: Workspace): Promise<void> {
  const [first] = await workspace.notebooks();
  const bytes = first === undefined ? null : await workspace.read(first.file);
  if (first && bytes) await workspace.compute(first.file, new TextDecoder().decode(bytes), new Map());
}

/** Starts serving a folder. */
export async function startServer(folder: string, options: ServerOptions): Promise<RunningServer> {
  const files = appFiles(options.appFolder);
  const workspace = openWorkspace(folder, { ...options, watch: true });
  const secrets = { token: secret(), cookie: secret() };
  let app: App | null = null;
  const server: Server = createServer(
    {
      headersTimeout: LIMITS.headers,
      requestTimeout: LIMITS.body,
      keepAliveTimeout: LIMITS.idle,
      connectionsCheckingInterval: 1_000,
      maxHeaderSize: LIMITS.headerBytes,
    },
    getRequestListener((request, env) => app?.fetch(request, env) ?? new Response(null, { status: 503 }), {
      overrideGlobalObjects: false,
    }),
  );
  boundedConnections(server, LIMITS.most);
  server.on(
    "clientError",
    (_, socket) =>
      void (socket.writable ? socket.end("HTTP/1.1 400 Bad Request\r\nConnection: close\r\n\r\n") : socket.destroy()),
  );
  await new Promise<void>((listening, failed) => {
    server.once("error", failed);
    server.listen(options.port ?? 0, "127.0.0.1", listening);
  });
  const { port } = server.address() as AddressInfo;
  const log = (id: string, failure: unknown) =>
    options.log(`${id} ${failure instanceof Error ? (failure.stack ?? failure.message) : String(failure)}`);
  app = createApp({ workspace, files, port, secrets, log, faultId: () => randomBytes(4).toString("hex") });
  void answerAhead(workspace).catch(() => undefined);
  return {
    port,
    url: `http://127.0.0.1:${port}/?token=${secrets.token}`,
    close: () => closed(server, workspace.close),
  };
}

async function closed(server: Server, closeWorkspace: () => Promise<void>): Promise<void> {
  const gone = new Promise<void>((done) => server.close(() => done()));
  server.closeIdleConnections();
  const farewell = setTimeout(() => server.closeAllConnections(), LIMITS.farewell);
  await Promise.all([closeWorkspace(), gone]);
  clearTimeout(farewell);
}
