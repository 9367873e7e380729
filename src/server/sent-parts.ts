/**
 * Parts of households as they were sent, compressed: a page that opens asks for the same parts as the one before it, and nearly
 * all of them are as they were. They lie in the memory of the server.
 */
import type { Context } from 'hono';
import type { PageText } from '../household/store.ts';
import { compressed, encodedAs, encodingFor } from './compressed.ts';

/** Bytes that are kept at most, our own choice; a household of ten years has 0.8 MB. */
const MOST = 8_000_000;
const JSON_TYPE = { 'Content-Type': 'application/json' };

interface SentPart {
  /** Another one where the part would be read otherwise. */
  readonly sign: string;
  readonly body: Uint8Array<ArrayBuffer>;
}

export class SentParts {
  readonly #most: number;
  /** By what was asked, the one that was sent last at the end. */
  readonly #parts = new Map<string, SentPart>();
  #bytes = 0;

  constructor(most = MOST) {
    this.#most = most;
  }

  /**
   * Answers with a part: as it was sent before, where it is still so.
   * @param asked which part of which household @param read reads it, unless its sign is the one that is known
   */
  async answer(
    c: Context,
    asked: string,
    read: (known: string | undefined) => Promise<PageText>,
  ): Promise<Response> {
    const encoding = encodingFor(c.req.header('accept-encoding'));
    const name = `${encoding} ${asked}`;
    const before = this.#parts.get(name);
    const { text, sign } = await read(before?.sign);
    const body = text === undefined ? before?.body : encoding && sign && (await compressed(text, encoding));
    if (!body || !sign) return c.body(text ?? '', 200, JSON_TYPE);
    // A copy: what compresses gives a piece of something larger.
    this.#keep(name, { sign, body: text === undefined ? body : new Uint8Array(body) });
    return c.body(body, 200, { ...JSON_TYPE, ...encodedAs(encoding) });
  }

  /** Keeps what is sent now in the place of what was sent for the same before; lets go of what was not asked for longest. */
  #keep(name: string, part: SentPart): void {
    this.#forget(name);
    this.#parts.set(name, part);
    this.#bytes += part.body.length;
    for (const oldest of this.#parts.keys()) {
      if (this.#bytes <= this.#most) break;
      this.#forget(oldest);
    }
  }

  #forget(name: string): void {
    this.#bytes -= this.#parts.get(name)?.body.length ?? 0;
    this.#parts.delete(name);
  }
}
