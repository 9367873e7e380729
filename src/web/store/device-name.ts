/** What this device is called in the history while it is not paired: "Firefox on Linux". A paired one has its name. */
import { words } from '../../words/words.ts';

const BROWSERS = [
  [/\bEdg(?:e|A|iOS)?\//, 'Edge'],
  [/\bOPR\//, 'Opera'],
  [/\b(?:Firefox|FxiOS)\//, 'Firefox'],
  [/\b(?:Chrome|CriOS|Chromium|HeadlessChrome)\//, 'Chrome'],
  [/\bSafari\//, 'Safari'],
] as const;
/** Systems with a name of their own; the others are called as the language calls them. */
const SYSTEMS = [
  [/iPhone/, 'iphone'],
  [/iPad/, 'ipad'],
  [/Android/, 'Android'],
  [/CrOS/, 'ChromeOS'],
  [/Windows/, 'Windows'],
  [/Mac OS X|Macintosh/, 'mac'],
  [/Linux|X11/, 'Linux'],
] as const;

export function deviceName(): string {
  return namedBy(navigator.userAgent);
}

/** @param userAgent what a browser says of itself */
export function namedBy(userAgent: string): string {
  const t = words().store.device;
  const browser = BROWSERS.find(([pattern]) => pattern.test(userAgent))?.[1] ?? t.browser;
  const system = SYSTEMS.find(([pattern]) => pattern.test(userAgent))?.[1];
  if (system === undefined) return browser;
  return t.on(browser, system === 'iphone' || system === 'ipad' || system === 'mac' ? t[system] : system);
}
