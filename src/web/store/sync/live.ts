/**
 * Hears of changes on the server while the page is in sight. A page out of sight keeps no connection open, since browsers
 * allow few to one server; it catches up when it is seen again.
 */
import { backoff } from './backoff.ts';

/** How often it is asked where nothing can be heard, ms. */
const ASK_EVERY = 3000;
/** A connection may be gone without a word: it is asked now and then all the same, ms. */
const ASK_ALL_THE_SAME = 60_000;
/** Failures to listen in a row after which it is asked instead. */
const GIVE_UP = 3;

export interface LiveParts {
  /** Opens the stream of events; undefined where this browser has none. */
  open(): EventSource | undefined;
  /** How far this page has heard. */
  heard(): { readonly epoch: string; readonly seq: number } | undefined;
  /** Fetches what is new. */
  pull(): void;
  /** The stream is open: the server can be reached. */
  reached(): void;
  /** Names the build that the server gives pages of. */
  served(build: string): void;
}

/** Listens from now on. @returns what to do when the page is seen or not any more */
export function listen(parts: LiveParts): { seen(visible: boolean): void } {
  let source: EventSource | undefined;
  let timer: ReturnType<typeof setTimeout> | undefined;
  let failures = 0;
  let visible = false;

  function told(event: Event) {
    const { data } = event as MessageEvent<string>;
    const news = read(data);
    if (!news) return;
    if (event.type === 'hello') {
      failures = 0;
      parts.reached();
      if (news.build !== undefined) parts.served(news.build);
    }
    const heard = parts.heard();
    if (!heard || heard.epoch !== news.epoch || heard.seq < news.seq) parts.pull();
  }

  function stop() {
    clearTimeout(timer);
    source?.close();
    source = undefined;
  }

  function start() {
    stop();
    if (!visible) return;
    source = failures < GIVE_UP ? parts.open() : undefined;
    if (!source) {
      timer = setTimeout(() => {
        parts.pull();
        failures = Math.max(0, failures - 1);
        start();
      }, ASK_EVERY);
      return;
    }
    const askNow = () => {
      parts.pull();
      timer = setTimeout(askNow, ASK_ALL_THE_SAME);
    };
    timer = setTimeout(askNow, ASK_ALL_THE_SAME);
    source.addEventListener('hello', told);
    source.addEventListener('change', told);
    source.addEventListener('error', () => {
      stop();
      failures += 1;
      timer = setTimeout(() => {
        parts.pull();
        start();
      }, backoff(failures));
    });
  }

  return {
    seen(now) {
      visible = now;
      if (now) parts.pull();
      failures = 0;
      start();
    },
  };
}

function read(data: string): { seq: number; epoch: string; build?: string } | undefined {
  try {
    const news = JSON.parse(data) as { seq?: unknown; epoch?: unknown; build?: unknown };
    if (typeof news.seq !== 'number' || typeof news.epoch !== 'string') return undefined;
    return { seq: news.seq, epoch: news.epoch, ...(typeof news.build === 'string' && { build: news.build }) };
  } catch {
    return undefined;
  }
}
