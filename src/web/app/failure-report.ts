/** What went wrong, as text to pass on: nothing of the household but what the error itself says. */
import { OWN_BUILD } from './build.ts';

/** @param screen its name in the address: "cupboard" */
export function failureReport(error: unknown, screen: string): string {
  const { name, message, stack } = error instanceof Error ? error : new Error(String(error));
  return [
    `Pouchful ${OWN_BUILD || '(not a built one)'}`,
    `Screen: ${screen}`,
    `${name}: ${message}`,
    // Without the page's own address: it may name a machine.
    (stack ?? '').replaceAll(window.location.origin, ''),
  ].join('\n');
}

/** Copies a text. @returns whether it is on the clipboard; pages that come over plain http are often refused it */
export async function copied(text: string): Promise<boolean> {
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    return false;
  }
}
