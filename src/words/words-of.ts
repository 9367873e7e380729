/** All texts of one language, made from its rooms. */
import { type Figures, figuresOf } from './figures.ts';
import type { Manner } from './manner.ts';

type Room = (f: Figures) => object;

/** The rooms of any language: each makes a room of the same shape as the English one. */
export type RoomsIn<T extends Record<string, Room>> = {
  readonly [K in keyof T]: (f: Figures) => ReturnType<T[K]>;
};

/** Every room with its texts as the figures are written; each is made when first asked for. */
export function roomsOf<T extends Record<string, Room>>(
  rooms: T,
  figures: Figures,
): { [K in keyof T]: ReturnType<T[K]> } {
  const all = {} as { [K in keyof T]: ReturnType<T[K]> };
  for (const [name, room] of Object.entries(rooms)) {
    let made: object | undefined;
    const get = () => {
      made ??= room(figures);
      return made;
    };
    Object.defineProperty(all, name, { get, enumerable: true });
  }
  return all;
}

/** As {@link roomsOf}, and the figures beside them. */
export function wordsOf<T extends Record<string, Room>>(
  rooms: T,
  manner: Manner,
): { figures: Figures } & { [K in keyof T]: ReturnType<T[K]> } {
  const figures = figuresOf(manner);
  return Object.defineProperty(roomsOf(rooms, figures), 'figures', { value: figures }) as ReturnType<
    typeof wordsOf<T>
  >;
}
