/** The catalogue in parts: a page fetches those of its screen first, and the others once it is at rest. */
import { figuresOf } from './figures.ts';
import type { Language, Manner } from './manner.ts';
import { PART_OF, type Part, type PartOf } from './part-shapes.ts';
import type { Words } from './words.ts';
import { roomsOf } from './words-of.ts';

type Load<P extends Part> = () => Promise<PartOf<P>>;

const LOAD: { readonly [L in Language]: { readonly [P in Part]: Load<P> } } = {
  en: {
    first: () => import('./en/parts/first.ts').then((m) => m.first),
    days: () => import('./en/parts/days.ts').then((m) => m.days),
    scale: () => import('./en/parts/scale.ts').then((m) => m.scale),
    solving: () => import('./en/parts/solving.ts').then((m) => m.solving),
    answers: () => import('./en/parts/answers.ts').then((m) => m.answers),
    warnings: () => import('./en/parts/warnings.ts').then((m) => m.warnings),
    stock: () => import('./en/parts/stock.ts').then((m) => m.stock),
    dried: () => import('./en/parts/dried.ts').then((m) => m.dried),
    home: () => import('./en/parts/home.ts').then((m) => m.home),
    care: () => import('./en/parts/care.ts').then((m) => m.care),
    mixes: () => import('./en/parts/mixes.ts').then((m) => m.mixes),
    house: () => import('./en/parts/house.ts').then((m) => m.house),
  },
  de: {
    first: () => import('./de/parts/first.ts').then((m) => m.first),
    days: () => import('./de/parts/days.ts').then((m) => m.days),
    scale: () => import('./de/parts/scale.ts').then((m) => m.scale),
    solving: () => import('./de/parts/solving.ts').then((m) => m.solving),
    answers: () => import('./de/parts/answers.ts').then((m) => m.answers),
    warnings: () => import('./de/parts/warnings.ts').then((m) => m.warnings),
    stock: () => import('./de/parts/stock.ts').then((m) => m.stock),
    dried: () => import('./de/parts/dried.ts').then((m) => m.dried),
    home: () => import('./de/parts/home.ts').then((m) => m.home),
    care: () => import('./de/parts/care.ts').then((m) => m.care),
    mixes: () => import('./de/parts/mixes.ts').then((m) => m.mixes),
    house: () => import('./de/parts/house.ts').then((m) => m.house),
  },
  nl: {
    first: () => import('./nl/parts/first.ts').then((m) => m.first),
    days: () => import('./nl/parts/days.ts').then((m) => m.days),
    scale: () => import('./nl/parts/scale.ts').then((m) => m.scale),
    solving: () => import('./nl/parts/solving.ts').then((m) => m.solving),
    answers: () => import('./nl/parts/answers.ts').then((m) => m.answers),
    warnings: () => import('./nl/parts/warnings.ts').then((m) => m.warnings),
    stock: () => import('./nl/parts/stock.ts').then((m) => m.stock),
    dried: () => import('./nl/parts/dried.ts').then((m) => m.dried),
    home: () => import('./nl/parts/home.ts').then((m) => m.home),
    care: () => import('./nl/parts/care.ts').then((m) => m.care),
    mixes: () => import('./nl/parts/mixes.ts').then((m) => m.mixes),
    house: () => import('./nl/parts/house.ts').then((m) => m.house),
  },
};

export const PARTS = Object.keys(LOAD.en) as readonly Part[];

/** The texts of one manner, as far as they are fetched. */
export interface WordsInParts {
  readonly words: Words;
  /** @throws where it cannot be fetched; the next who asks tries again */
  fetch(part: Part): Promise<void>;
}

/**
 * Whoever asks for a text that is not fetched yet gets thrown what it waits for: what is being drawn is drawn then.
 * @param lacks told first which part is not here; it may throw something else, such as why it could not be had
 */
export function wordsInParts(manner: Manner, lacks: (part: Part) => void = () => {}): WordsInParts {
  const figures = figuresOf(manner);
  const here: Record<string, unknown> = { figures };
  const coming = new Map<Part, Promise<void>>();
  function fetch(part: Part): Promise<void> {
    const asked = coming.get(part) ?? load(part);
    coming.set(part, asked);
    return asked;
  }
  async function load(part: Part): Promise<void> {
    try {
      Object.assign(here, roomsOf(await LOAD[manner.language][part](), figures));
    } catch (error) {
      coming.delete(part);
      throw error;
    }
  }
  const words = new Proxy(here, {
    get(_, room: string) {
      // Asked by whoever awaits the texts: they are no promise.
      if (room === 'then') return undefined;
      const made = here[room];
      if (made !== undefined) return made;
      const part = PART_OF[room as keyof typeof PART_OF];
      lacks(part);
      throw fetch(part);
    },
  }) as object as Words;
  return { words, fetch };
}
