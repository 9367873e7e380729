/** What the keeper does not want to be asked for before a day; kept on this device. */
import { useState } from 'react';
import { plusDays } from '../../kitchen/days.ts';
import type { Day } from '../../kitchen/model.ts';
import { deviceStorage } from '../shared/device-storage.ts';

const KEPT = 'pouchful.not-today';
/** Days for which an offer that was turned down is not made again; our own choice, no source. */
export const TURNED_DOWN = 30;

interface NotToday {
  /** Whether something is put off on the day. */
  isOff(key: string): boolean;
  /** @param days until it is told again: 1 for tomorrow */
  putOff(key: string, days: number): void;
}

export function useNotToday(day: Day): NotToday {
  const [kept, setKept] = useState(read);
  return {
    isOff: (key) => (kept[key] ?? '') > day,
    putOff(key, days) {
      // What is over goes with the next that is put off.
      const later = Object.fromEntries(Object.entries(read()).filter(([, until]) => until > day));
      const next = { ...later, [key]: plusDays(day, days) };
      deviceStorage.setItem(KEPT, JSON.stringify(next));
      setKept(next);
    },
  };
}

function read(): Readonly<Record<string, Day>> {
  try {
    const kept: unknown = JSON.parse(deviceStorage.getItem(KEPT) ?? '{}');
    if (typeof kept !== 'object' || kept === null) return {};
    return Object.fromEntries(Object.entries(kept).filter(([, day]) => typeof day === 'string'));
  } catch {
    return {};
  }
}
