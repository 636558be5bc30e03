// What the engine needs of its surroundings and the language alone does not have; Node and browsers both do.
declare global {
  class TextDecoder {
    constructor(label?: string, options?: { fatal?: boolean; ignoreBOM?: boolean });
    decode(input?: Uint8Array): string;
  }
}

export {};
