/**
 * Changes that wait to be sent, in the order in which they were made. Each stands on the device first, under a key of
 * this tab, so that two tabs of one browser never touch each other's.
 */
import type { Kind } from '../../../household/model.ts';
import type { DeviceStorage } from '../../shared/device-storage.ts';
import { type Change, FOLLOWS } from './change.ts';

const PREFIX = 'pouchful.unsent.';
/** What a tab changes itself is numbered from here on, what it takes over before that: slots stand in the order of changes. */
const MIDDLE = 500_000_000;

export class Outbox {
  readonly #storage: DeviceStorage;
  readonly #tab: string;
  #changes: readonly Change[] = [];
  /** Slots that the device did not take. */
  readonly #unsafe = new Set<string>();
  #last = MIDDLE;
  #first = MIDDLE + 1;

  constructor(storage: DeviceStorage, tab: string) {
    this.#storage = storage;
    this.#tab = tab;
  }

  all(): readonly Change[] {
    return this.#changes;
  }

  /** Changes of one record, each made upon the one before it. */
  chain(kind: Kind, id: string): Change[] {
    return this.#changes.filter((c) => c.kind === kind && c.id === id);
  }

  /** Whether each of them would outlive this page. */
  onDevice(): boolean {
    return this.#unsafe.size === 0;
  }

  /** A place in the storage for a new change. */
  slot(): string {
    this.#last += 1;
    return this.#slotAt(this.#last);
  }

  add(change: Change): void {
    this.#changes = [...this.#changes, change];
    this.#store(change);
  }

  /** Puts changes of one record in the place of those that were there. */
  replace(before: readonly Change[], after: readonly Change[]): void {
    const [first] = before;
    if (!first) return;
    const gone = new Set(before.map((c) => c.slot));
    const staying = new Map(after.map((c) => [c.slot, c]));
    this.#changes = this.#changes.flatMap((c) => (gone.has(c.slot) ? (staying.get(c.slot) ?? []) : c));
    for (const { slot } of before) if (!staying.has(slot)) this.#erase(slot);
    for (const change of after) this.#store(change);
  }

  remove(change: Change): void {
    this.replace([change], []);
  }

  /**
   * Takes over what tabs that are gone left on the device, into slots of this tab: whoever comes after this one finds all
   * that it showed in one place. It comes before what this tab changed. Sent by two tabs it is still one write, since it
   * keeps its id.
   * @param isOpen whether the tab with this id is still there
   */
  adopt(isOpen: (tab: string) => boolean): readonly Change[] {
    const known = new Set(this.#changes.flatMap((c) => [c.slot, c.writeId]));
    const found: { readonly change: Change; readonly at: string }[] = [];
    let before = { tab: '', at: '' };
    for (const key of this.#storage.keys(PREFIX).sort()) {
      const tab = key.slice(PREFIX.length).replace(/\.\d+$/, '');
      if (known.has(key) || tab === this.#tab || isOpen(tab)) continue;
      const change = read(this.#storage.getItem(key));
      if (!change) continue;
      // The tab that was moving it here from another was gone before it was done.
      if (known.has(change.writeId)) {
        this.#erase(key);
        continue;
      }
      known.add(change.writeId);
      // Changes of one tab stay in their order, though the clock may have been put back between them.
      const at = tab === before.tab && before.at > change.at ? before.at : change.at;
      before = { tab, at };
      // Whether it was sent, nobody knows: it is sent again as it stands. What waited for another was not.
      const { sent: _, unseen, ...rest } = change;
      const taken = {
        ...rest,
        slot: key,
        ...(change.base.version !== FOLLOWS && { sent: true as const }),
        ...(unseen && change.body !== null && { unseen }),
      };
      found.push({ change: taken, at });
    }
    // Sorted by their keys already: what was made at the same time keeps that order.
    found.sort((a, b) => (a.at < b.at ? -1 : a.at > b.at ? 1 : 0));
    this.#first -= found.length;
    const moved = found.map(({ change }, n) => this.#moved(change, this.#slotAt(this.#first + n)));
    this.#changes = [...moved, ...this.#changes];
    return moved;
  }

  /** A change in another slot; in the one where it stands where the device has no room for it twice. */
  #moved(change: Change, slot: string): Change {
    const moved = { ...change, slot };
    if (this.#storage.setItem(slot, JSON.stringify(moved))) {
      this.#storage.removeItem(change.slot);
      return moved;
    }
    this.#storage.removeItem(slot);
    return change;
  }

  #slotAt(n: number): string {
    return `${PREFIX}${this.#tab}.${String(n).padStart(9, '0')}`;
  }

  #store(change: Change): void {
    if (this.#storage.setItem(change.slot, JSON.stringify(change))) this.#unsafe.delete(change.slot);
    else this.#unsafe.add(change.slot);
  }

  #erase(slot: string): void {
    this.#storage.removeItem(slot);
    this.#unsafe.delete(slot);
  }
}

/** A change as it was stored; undefined for what is none, which stays where it is. */
function read(text: string | null): Change | undefined {
  try {
    const change = JSON.parse(text ?? 'null') as Partial<Change> | null;
    const whole =
      typeof change?.kind === 'string' &&
      typeof change.id === 'string' &&
      typeof change.writeId === 'string' &&
      typeof change.at === 'string' &&
      typeof change.base?.version === 'number' &&
      change.base.body !== undefined &&
      change.body !== undefined;
    return whole ? (change as Change) : undefined;
  } catch {
    return undefined;
  }
}
