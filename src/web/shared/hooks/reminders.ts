/**
 * Reminders of what is due now: in the title of the page, and as notifications where the keeper allowed them. Both are
 * extras: what is due always stands on the page itself.
 */
import { useEffect, useState } from 'react';

interface Due {
  /** The same for one check as long as it is due. */
  readonly key: string;
  /** "Look and turn: Carrot". */
  readonly words: string;
}

/** Checks that a notification was sent for since the page was opened. */
const told = new Set<string>();

/** Shows what is due for as long as the page is open. */
export function useReminders(due: readonly Due[]): void {
  const first = due[0]?.words;
  useEffect(() => {
    if (first === undefined) return;
    const before = document.title;
    document.title = `${due.length > 1 ? `(${due.length}) ` : ''}${first}`;
    return () => {
      document.title = before;
    };
  }, [first, due.length]);
  useEffect(() => {
    for (const { key, words } of due) {
      if (told.has(key) || !canNotify() || Notification.permission !== 'granted') continue;
      told.add(key);
      notify(key, words);
    }
  });
}

function notify(key: string, words: string): void {
  try {
    new Notification(words, { tag: key });
  } catch {
    // Some phones let only background workers notify; the page says it all the same.
  }
}

const canNotify = () => typeof Notification === 'function';

/** Whether notifications may come, and how to ask; ask only when the keeper presses for it. */
export function useNotifications(): {
  readonly state: 'granted' | 'denied' | 'default' | 'none';
  ask(): void;
} {
  const [state, setState] = useState<NotificationPermission | 'none'>(() =>
    canNotify() ? Notification.permission : 'none',
  );
  return {
    state,
    ask() {
      if (canNotify()) void Notification.requestPermission().then(setState, () => setState('denied'));
    },
  };
}
