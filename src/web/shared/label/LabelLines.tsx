/** Every line of a pasted label with what became of it: read, waiting for an answer, left out, or not understood. */
import type { LabelReading, ReadLine } from '../../../foods/label/reading.ts';

type Fate = 'read' | 'partly' | 'waits' | 'per' | 'ignored' | 'unread';

/** A sign and a word for each, so that colour is never needed. */
const FATES: Record<Fate, readonly [sign: string, word: string]> = {
  read: ['✓', 'Read'],
  partly: ['!', 'Partly read'],
  waits: ['?', 'Waits for an answer'],
  per: ['↓', 'Quantity'],
  ignored: ['–', 'Left out'],
  unread: ['✕', 'Not understood'],
};

export function LabelLines({ reading, open }: { reading: LabelReading; open: ReadonlySet<string> }) {
  const fates = reading.lines.map((line, at) => fateOf(line, at, reading, open));
  const count = (...kinds: Fate[]) => fates.filter((f) => f && kinds.includes(f)).length;
  return (
    <section aria-label="Line by line">
      <h4>Line by line</h4>
      <p className="hint" aria-live="polite">
        {[
          `${count('read')} read`,
          count('waits') && `${count('waits')} waiting for an answer`,
          count('partly') && `${count('partly')} partly read`,
          count('ignored', 'per') && `${count('ignored', 'per')} without an amount`,
          count('unread') && `${count('unread')} not understood`,
        ]
          .filter(Boolean)
          .join(', ')}
      </p>
      <ol className="label-lines">
        {reading.lines.map((line, at) => {
          const fate = fates[at];
          if (!fate) return null;
          const [sign, word] = FATES[fate];
          return (
            // biome-ignore lint/suspicious/noArrayIndexKey: a line has no name but its place
            <li key={at} className={`label-line ${fate}`}>
              <span className="label-sign" aria-hidden="true">
                {sign}
              </span>
              <span className="label-text">{line.text.trim()}</span>
              <span className="label-note">
                <strong>{word}</strong>
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
function noteOf({ text, note }: ReadLine, at: number, { amounts }: LabelReading, fate: Fate): string {
  const none = note === '' || (fate === 'waits' && amounts.every((a) => a.line !== at || a.open.length > 0));
  if (none) return '';
  const repeated = `not read: "${text.trim()}": `;
  return `: ${note.startsWith(repeated) ? note.slice(repeated.length) : note}`;
}
