/** The one page that is served while the household cannot be opened. Plain HTML: it works without any script. */
import type { KeptBackup } from '../household/backup/backups.ts';
import type { OpeningError } from '../household/file/opening-error.ts';

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

const TITLES: Readonly<Partial<Record<OpeningError['reason'], string>>> = {
  damaged: 'The household file is damaged',
  'stray log': 'The household file was replaced',
  'put back': 'The household file was replaced',
  gone: 'The household file is gone',
  foreign: 'The household file cannot be read',
  empty: 'The household file is empty',
};

const MOST_SHOWN = 10;

export function rescuePage({ error, backups, ways, failed }: RescueView): string {
  const title = TITLES[error.reason] ?? 'The household cannot be opened';
  const parts = [
    `<h1>${title}</h1>`,
    `<p>Nothing was written to it. Choose how to go on; the file as it is now is kept beside it under another name.</p>`,
    failed === undefined ? '' : `<p role="alert"><strong>That did not help:</strong> ${text(failed)}</p>`,
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
  return whole('Done', `<h1>Done</h1>\n${list}\n<p><a href="/">Open Pouchful</a></p>`);
}

function goBack(backups: readonly KeptBackup[]): string {
  if (backups.length === 0) return '<h2>Backups</h2><p>There is no backup that is whole.</p>';
  const items = backups
    .slice(0, MOST_SHOWN)
    .map(
      ({ name, at }, i) =>
        `<li>${form('go-back', `${i === 0 ? 'Go back to the newest' : 'Go back'}: ${at.slice(0, 16).replace('T', ' ')} UTC`, { name })}</li>`,
    );
  return `<h2>Go back to a backup</h2><p>What was changed after it is not in it.</p><ul>${items.join('\n')}</ul>`;
}

function saveReadable(hasBackups: boolean): string {
  const or = hasBackups ? ' Where the newest backup is not new enough, try this.' : '';
  return `<h2>Save what can be read</h2><p>Reads the file piece by piece and puts all that is whole into a new one.${or}</p>${form('save-readable', 'Save what can be read', {})}`;
}

function withoutLog(): string {
  return `<h2>Use the file as it is now</h2><p>A copy was put here while the log of the file before it still lay beside it. The log is set aside, so that it cannot undo the copy.</p>${form('without-log', 'Use the file as it is now', {})}`;
}

function withLog(): string {
  return `<h2>Nobody put a copy here?</h2><p>Then file and log belong together, and the newest changes are in the log.</p>${form('with-log', 'Use file and log together', {})}`;
}

function beginAnew(): string {
  return `<h2>Begin anew</h2><p>Starts an empty household. Backups stay where they are.</p>${form('begin-anew', 'Begin an empty household', {})}`;
}

function details({ message, findings }: OpeningError): string {
  const lines = [message, ...findings].map((line) => `<li>${text(line)}</li>`).join('\n');
  return `<details><summary>What was found</summary><ul>${lines}</ul></details>`;
}

function form(way: Way, label: string, fields: Readonly<Record<string, string>>): string {
  const hidden = Object.entries(fields).map(
    ([name, value]) => `<input type="hidden" name="${text(name)}" value="${text(value)}">`,
  );
  return `<form method="post" action="/rescue/${way}">${hidden.join('')}<button>${text(label)}</button></form>`;
}

function whole(title: string, body: string): string {
  return `<!doctype html>
<html lang="en">
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
