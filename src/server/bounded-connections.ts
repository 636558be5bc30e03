// At most so many connections at once. When one more comes, the one that has done least gives way, so that idle or half-sent
// connections never shut out the maker.
import type { Server } from "node:http";
import type { Socket } from "node:net";

/** Keeps a server within `most` connections. */
export function boundedConnections(server: Server, most: number): void {
  const idle = new Set<Socket>();
  const busy = new Set<Socket>();
  server.on("connection", (socket: Socket) => {
    idle.add(socket);
    socket.on("close", () => {
      idle.delete(socket);
      busy.delete(socket);
    });
    if (idle.size + busy.size <= most) return;
    const [first] = idle.size > 1 ? idle : busy;
    if (first !== undefined && first !== socket) first.destroy();
  });
  server.on("request", ({ socket }, response) => {
    idle.delete(socket);
    busy.add(socket);
    response.on("close", () => {
      if (busy.delete(socket) && !socket.destroyed) idle.add(socket);
    });
  });
}
