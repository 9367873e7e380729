/** What this device is called in the history: "Firefox on Linux". */
import { deviceStorage } from '../shared/device-storage.ts';

const SLOT = 'pouchful.device';
const BROWSERS = [
  [/\bEdg(?:e|A|iOS)?\//, 'Edge'],
  [/\bOPR\//, 'Opera'],
  [/\b(?:Firefox|FxiOS)\//, 'Firefox'],
  [/\b(?:Chrome|CriOS|Chromium|HeadlessChrome)\//, 'Chrome'],
  [/\bSafari\//, 'Safari'],
] as const;
const SYSTEMS = [
  [/iPhone/, 'an iPhone'],
  [/iPad/, 'an iPad'],
  [/Android/, 'Android'],
  [/CrOS/, 'ChromeOS'],
  [/Windows/, 'Windows'],
  [/Mac OS X|Macintosh/, 'a Mac'],
  [/Linux|X11/, 'Linux'],
] as const;

/** The name that the keeper gave this device, or what its browser says of itself. */
export function deviceName(): string {
  return deviceStorage.getItem(SLOT) || namedBy(navigator.userAgent);
}

/** @param userAgent what a browser says of itself */
export function namedBy(userAgent: string): string {
  const browser = BROWSERS.find(([pattern]) => pattern.test(userAgent))?.[1] ?? 'A browser';
  const system = SYSTEMS.find(([pattern]) => pattern.test(userAgent))?.[1];
  return system ? `${browser} on ${system}` : browser;
}
