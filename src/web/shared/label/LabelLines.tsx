/** Every line of a pasted label with what became of it: read, waiting for an answer, left out, or not understood. */
import type { LabelReading, ReadLine } from '../../../foods/label/reading.ts';
import { words } from '../../../words/words.ts';

type Fate = 'read' | 'partly' | 'waits' | 'per' | 'ignored' | 'unread';

/** A sign for each beside its word, so that colour is never needed. */
const SIGNS: Record<Fate, string> = {
  read: '✓',
  partly: '!',
  waits: '?',
  per: '↓',
  ignored: '–',
  unread: '✕',
};

export function LabelLines({ reading, open }: { reading: LabelReading; open: ReadonlySet<string> }) {
  const fates = reading.lines.map((line, at) => fateOf(line, at, reading, open));
  const t = words().label.lines;
  const count = (...kinds: Fate[]) => fates.filter((f) => f && kinds.includes(f)).length;
  return (
    <section aria-label={t.title}>
      <h4>{t.title}</h4>
      <p className="hint" aria-live="polite">
        {[
          t.counted.read(count('read')),
          count('waits') && t.counted.waits(count('waits')),
          count('partly') && t.counted.partly(count('partly')),
          count('ignored', 'per') && t.counted.without(count('ignored', 'per')),
          count('unread') && t.counted.unread(count('unread')),
        ]
          .filter(Boolean)
          .join(', ')}
      </p>
      <ol className="label-lines">
        {reading.lines.map((line, at) => {
          const fate = fates[at];
          if (!fate) return null;
          return (
            // biome-ignore lint/suspicious/noArrayIndexKey: a line has no name but its place
            <li key={at} className={`label-line ${fate}`}>
              <span className="label-sign" aria-hidden="true">
                {SIGNS[fate]}
              </span>
              <span className="label-text">{line.text.trim()}</span>
              <span className="label-note">
                <strong>{t[fate]}</strong>
                {noteOf(line, at, reading, fate)}
              </span>
            </li>
          );
        })}
      </ol>
    </section>
  );
}

/** Undefined for an empty line. */
function fateOf(
  line: ReadLine,
  at: number,
  reading: LabelReading,
  open: ReadonlySet<string>,
): Fate | undefined {
  if (line.text.trim() === '') return undefined;
  if (line.kind === 'unread') return 'unread';
  if (line.missed.length > 0) return 'partly';
  const waits = reading.amounts.some((a) => a.line === at && a.open.some((id) => open.has(id)));
  if (waits) return 'waits';
  return line.kind === 'amount' ? 'read' : line.kind === 'quantity' ? 'per' : 'ignored';
}

/** What the reader says of the line, less what stands beside it already and what is still to be asked. */
function noteOf({ note, why }: ReadLine, at: number, { amounts }: LabelReading, fate: Fate): string {
  const none = note === '' || (fate === 'waits' && amounts.every((a) => a.line !== at || a.open.length > 0));
  if (none) return '';
  return `: ${why ?? note}`;
}
