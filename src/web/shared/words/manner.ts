/** How this device's keeper reads: language and units, kept on the device; what the browser asks for until they choose. */
import { languageOf, type Manner, PLAIN_MANNER, readManner } from '../../../words/manner.ts';
import { deviceStorage } from '../device-storage.ts';
import { reloadKeepingTyped } from '../typing/typed-text.ts';

const KEY = 'pouchful.manner';

export function mannerOfDevice(): Manner {
  const otherwise = { ...PLAIN_MANNER, language: languageOf(navigator.languages) };
  try {
    return readManner(JSON.parse(deviceStorage.getItem(KEY) ?? 'null'), otherwise);
  } catch {
    return otherwise;
  }
}

/** Keeps it, and draws the page anew in it; what waits to be sent is on the device and stays, and so does what was typed. */
export function chooseManner(manner: Manner): void {
  deviceStorage.setItem(KEY, JSON.stringify(manner));
  reloadKeepingTyped();
}
