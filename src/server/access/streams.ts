/** Answers that stay open (server-sent events): ended at once when their device is put out, or the server stops. */

export class OpenStreams {
  /** How to end each, with whose it is, where devices are told apart. */
  readonly #open = new Map<symbol, { readonly deviceId: string | undefined; end(): void }>();

  /**
   * Hears when a stream must end.
   * @param deviceId whose stream it is
   * @returns a function that ends hearing, for a stream that ended by itself
   */
  readonly untilEnded = (deviceId: string | undefined, end: () => void): (() => void) => {
    const key = Symbol();
    this.#open.set(key, { deviceId, end });
    return () => {
      this.#open.delete(key);
    };
  };

  /** Ends the streams of one device. */
  endOf(deviceId: string): void {
    this.#end((id) => id === deviceId);
  }

  endAll(): void {
    this.#end(() => true);
  }

  #end(whose: (deviceId: string | undefined) => boolean): void {
    for (const [key, { deviceId, end }] of [...this.#open]) {
      if (!whose(deviceId)) continue;
      this.#open.delete(key);
      end();
    }
  }
}
