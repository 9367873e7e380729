/** The one page that is served while the household cannot be opened. Plain HTML: it works without any script. */

import type { KeptBackup } from '../household/backup/backups.ts';
import type { OpeningError } from '../household/file/opening-error.ts';
import { words } from '../words/words.ts';

/** What may be done about it; the name of each is the address it is sent to. */
export type Way = 'go-back' | 'save-readable' | 'without-log' | 'with-log' | 'begin-anew';

export interface RescueView {
  readonly error: OpeningError;
  /** Those that are whole, newest first. */
  readonly backups: readonly KeptBackup[];
  readonly ways: readonly Way[];
  /** Why the last try did not help. */
  readonly failed?: string;
}

const TITLES: Readonly<
  Partial<Record<OpeningError['reason'], 'damaged' | 'replaced' | 'gone' | 'foreign' | 'empty'>>
> = {
  damaged: 'damaged',
  'stray log': 'replaced',
  'put back': 'replaced',
  gone: 'gone',
  foreign: 'foreign',
  empty: 'empty',
};

const MOST_SHOWN = 10;

export function rescuePage({ error, backups, ways, failed }: RescueView): string {
  const t = words().access.rescue;
  const title = t[TITLES[error.reason] ?? 'other'];
  const parts = [
    `<h1>${title}</h1>`,
    `<p>${t.intro}</p>`,
    failed === undefined ? '' : `<p role="alert"><strong>${t.didNotHelp}</strong> ${text(failed)}</p>`,
    `<p><code>${text(error.path)}</code></p>`,
    ways.includes('without-log') ? withoutLog() : '',
    ways.includes('with-log') ? withLog() : '',
    ways.includes('go-back') ? goBack(backups) : '',
    ways.includes('save-readable') ? saveReadable(backups.length > 0) : '',
    ways.includes('begin-anew') ? beginAnew() : '',
    details(error),
  ];
  return whole(title, parts.join('\n'));
}

/** After a choice: the page loads itself again, and by then the household is served. */
export function donePage(lines: readonly string[]): string {
  const list = lines.map((line) => `<p>${text(line)}</p>`).join('\n');
  const t = words().access.rescue;
  return whole(t.done, `<h1>${t.done}</h1>\n${list}\n<p><a href="/">${t.open}</a></p>`);
}

function goBack(backups: readonly KeptBackup[]): string {
  const t = words().access.rescue;
  if (backups.length === 0) return `<h2>${t.backups}</h2><p>${t.noBackup}</p>`;
  const items = backups.slice(0, MOST_SHOWN).map(({ name, at }, i) => {
    const when = at.slice(0, 16).replace('T', ' ');
    return `<li>${form('go-back', i === 0 ? t.newest(when) : t.goBack(when), { name })}</li>`;
  });
  return `<h2>${t.goBackTitle}</h2><p>${t.goBackText}</p><ul>${items.join('\n')}</ul>`;
}

function saveReadable(hasBackups: boolean): string {
  const t = words().access.rescue;
  const or = hasBackups ? ` ${t.saveIf}` : '';
  return `<h2>${t.saveTitle}</h2><p>${t.saveText}${or}</p>${form('save-readable', t.saveTitle, {})}`;
}

function withoutLog(): string {
  const t = words().access.rescue;
  return `<h2>${t.asItIsTitle}</h2><p>${t.asItIsText}</p>${form('without-log', t.asItIsTitle, {})}`;
}

function withLog(): string {
  const t = words().access.rescue;
  return `<h2>${t.withLogTitle}</h2><p>${t.withLogText}</p>${form('with-log', t.withLog, {})}`;
}

function beginAnew(): string {
  const t = words().access.rescue;
  return `<h2>${t.anewTitle}</h2><p>${t.anewText}</p>${form('begin-anew', t.anew, {})}`;
}

function details({ message, findings }: OpeningError): string {
  const lines = [message, ...findings].map((line) => `<li>${text(line)}</li>`).join('\n');
  return `<details><summary>${words().access.rescue.found}</summary><ul>${lines}</ul></details>`;
}

function form(way: Way, label: string, fields: Readonly<Record<string, string>>): string {
  const hidden = Object.entries(fields).map(
    ([name, value]) => `<input type="hidden" name="${text(name)}" value="${text(value)}">`,
  );
  return `<form method="post" action="/rescue/${way}">${hidden.join('')}<button>${text(label)}</button></form>`;
}

function whole(title: string, body: string): string {
  return `<!doctype html>
<html lang="${words().figures.locale}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>Pouchful: ${text(title)}</title>
<style>
body { font: 1.05rem/1.5 system-ui, sans-serif; max-width: 40rem; margin: 0 auto; padding: 1rem; color: #222; background: #fff; }
code { overflow-wrap: anywhere; }
button { font: inherit; min-height: 44px; padding: 0 1rem; margin: 0.2rem 0; }
ul { padding-left: 1.2rem; }
</style>
</head>
<body><main>
${body}
</main></body>
</html>
`;
}

/** A text as HTML. */
function text(raw: string): string {
  const names: Record<string, string> = {
    '&': '&amp;',
    '<': '&lt;',
    '>': '&gt;',
    '"': '&quot;',
    "'": '&#39;',
  };
  return raw.replace(/[&<>"']/g, (letter) => names[letter] ?? letter);
}
