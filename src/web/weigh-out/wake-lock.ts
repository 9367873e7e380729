/** Keeps the screen lit while hands are at the scale. Where the browser cannot, nothing else changes. */
import { useEffect } from 'react';

/** @param wanted whether the screen is to stay lit; let go when it no longer is, or the page is left */
export function useWakeLock(wanted: boolean): void {
  useEffect(() => {
    if (!wanted || !('wakeLock' in navigator)) return;
    let left = false;
    let lock: WakeLockSentinel | undefined;
    async function ask() {
      // The browser lets go of it whenever the page is out of sight.
      if (left || document.visibilityState === 'hidden' || (lock && !lock.released)) return;
      try {
        const got = await navigator.wakeLock.request('screen');
        if (left) await got.release();
        else lock = got;
      } catch {
        // Low battery, or not allowed here: the screen goes dark as it always did.
      }
    }
    void ask();
    document.addEventListener('visibilitychange', ask);
    return () => {
      left = true;
      document.removeEventListener('visibilitychange', ask);
      void lock?.release().catch(() => {});
    };
  }, [wanted]);
}
