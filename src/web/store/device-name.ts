/** What this device is called in the history while it is not paired: "Firefox on Linux". A paired one has its name. */
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

export function deviceName(): string {
  return namedBy(navigator.userAgent);
}

/** @param userAgent what a browser says of itself */
export function namedBy(userAgent: string): string {
  const browser = BROWSERS.find(([pattern]) => pattern.test(userAgent))?.[1] ?? 'A browser';
  const system = SYSTEMS.find(([pattern]) => pattern.test(userAgent))?.[1];
  return system ? `${browser} on ${system}` : browser;
}
