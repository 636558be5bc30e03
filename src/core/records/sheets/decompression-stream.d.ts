// The part of the web standard's streams that unpacking needs; Node and browsers have it.
interface DecompressionStream {
  readonly writable: { getWriter(): { write(bytes: Uint8Array): Promise<void>; close(): Promise<void> } };
  readonly readable: {
    getReader(): { read(): Promise<{ done: boolean; value?: Uint8Array }>; cancel(): Promise<void> };
  };
}
declare const DecompressionStream: new (format: "deflate-raw") => DecompressionStream;
