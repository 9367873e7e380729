/**
 * What this browser keeps for this page. Storage that is switched off, full or broken never throws: what it does not
 * take lasts as long as the page, and who listens is told.
 */

export interface DeviceStorage {
  getItem(key: string): string | null;
  /** @returns whether it is on the device; else it lasts as long as this page */
  setItem(key: string, value: string): boolean;
  removeItem(key: string): void;
  /** Every key that begins with `prefix`. */
  keys(prefix: string): string[];
}

const listeners = new Set<() => void>();
let troubled = false;

/** @param open gives the browser's storage; may throw @param failed is told of what the browser did not take */
export function survivingStorage(open: () => Storage, failed: () => void = () => {}): DeviceStorage {
  /** What the browser did not take. */
  const here = new Map<string, string>();
  const attempt = <T>(work: (storage: Storage) => T): T | undefined => {
    try {
      return work(open());
    } catch {
      return undefined;
    }
  };
  return {
    getItem: (key) => here.get(key) ?? attempt((s) => s.getItem(key)) ?? null,
    setItem(key, value) {
      const kept = attempt((s) => {
        s.setItem(key, value);
        return s.getItem(key) === value;
      });
      if (kept) here.delete(key);
      else {
        here.set(key, value);
        failed();
      }
      return kept === true;
    },
    removeItem(key) {
      here.delete(key);
      attempt((s) => s.removeItem(key));
    },
    keys(prefix) {
      const kept = attempt((s) => Array.from({ length: s.length }, (_, i) => s.key(i) ?? '')) ?? [];
      return [...new Set([...kept, ...here.keys()])].filter((key) => key.startsWith(prefix));
    },
  };
}

function failed(): void {
  troubled = true;
  for (const listener of listeners) listener();
}

/** Of this device, for as long as the keeper does not clear it. */
export const deviceStorage: DeviceStorage = survivingStorage(() => localStorage, failed);

/** Of this tab: it survives a reload. */
export const tabStorage: DeviceStorage = survivingStorage(() => sessionStorage);

/** Whether the device did not take something that was to be kept. */
export const hasStorageTrouble = (): boolean => troubled;

/** Tells when the device did not take something. @returns what ends the listening */
export function onStorageTrouble(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}
