/** Answers that stay open (server-sent events): ended at once when their device is put out, or the server stops. */

export class OpenStreams {
  readonly #open = new Map<() => void, string | undefined>();

  /**
   * Hands a stream on until it ends by itself, its reader leaves, or it is ended here.
   * @param deviceId whose stream it is, where devices are told apart
   */
  through(body: ReadableStream<Uint8Array>, deviceId?: string): ReadableStream<Uint8Array> {
    const reader = body.getReader();
    const open = this.#open;
    let end = () => {};
    return new ReadableStream<Uint8Array>({
      start(controller) {
        end = () => {
          open.delete(end);
          controller.close();
          void reader.cancel().catch(() => {});
        };
        open.set(end, deviceId);
      },
      async pull(controller) {
        try {
          const { done, value } = await reader.read();
          if (!open.has(end)) return;
          if (!done) return controller.enqueue(value);
          open.delete(end);
          controller.close();
        } catch (error) {
          if (!open.delete(end)) return;
          controller.error(error);
        }
      },
      cancel(reason) {
        open.delete(end);
        return reader.cancel(reason);
      },
    });
  }

  /** Ends the streams of one device. */
  endOf(deviceId: string): void {
    for (const [end, id] of [...this.#open]) if (id === deviceId) end();
  }

  endAll(): void {
    for (const end of [...this.#open.keys()]) end();
  }
}
