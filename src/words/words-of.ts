/** All texts of one language, made from its rooms. */
import { type Figures, figuresOf } from './figures.ts';
import type { Manner } from './manner.ts';

type Room = (f: Figures) => object;

/** The rooms of any language: each makes a room of the same shape as the English one. */
export type RoomsIn<T extends Record<string, Room>> = {
  readonly [K in keyof T]: (f: Figures) => ReturnType<T[K]>;
};

/** Every room with its texts as the figures are written. */
export function roomsOf<T extends Record<string, Room>>(
  rooms: T,
  figures: Figures,
): { [K in keyof T]: ReturnType<T[K]> } {
  const made = Object.entries(rooms).map(([name, room]) => [name, room(figures)]);
  return Object.fromEntries(made);
}

/** As {@link roomsOf}, and the figures beside them. */
export function wordsOf<T extends Record<string, Room>>(
  rooms: T,
  manner: Manner,
): { figures: Figures } & { [K in keyof T]: ReturnType<T[K]> } {
  const figures = figuresOf(manner);
  return { figures, ...roomsOf(rooms, figures) };
}
