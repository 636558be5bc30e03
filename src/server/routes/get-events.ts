import type { Workspace } from "../workspace/workspace.ts";

/** GET /api/events: a stream that names each file that something else has changed. It lives as long as the page listens. */
export async function getEvents(request: Request, workspace: Workspace): Promise<Response> {
  const encoder = new TextEncoder();
  let end: () => void = () => undefined;
  const stream = new ReadableStream<Uint8Array>({
    start(controller) {
      const send = (text: string) => controller.enqueue(encoder.encode(text));
      send(": here\n\n");
      const stop = workspace.onChange((file) => send(`data: ${JSON.stringify({ file })}\n\n`));
      const pulse = setInterval(() => send(": here\n\n"), 20_000);
      pulse.unref();
      end = () => {
        clearInterval(pulse);
        stop();
      };
      request.signal.addEventListener("abort", () => end());
    },
    cancel: () => end(),
  });
  return new Response(stream, { headers: { "content-type": "text/event-stream", "cache-control": "no-store" } });
}
