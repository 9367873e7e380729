/** What the marks in the picture of a life mean; only those that are in it. */
import type { ReactNode } from 'react';
import { SEEN } from '../../../care/model.ts';
import type { LifeEvent, Lifeline } from '../../../household/reckon/care/lifeline.ts';
import { words } from '../../../words/words.ts';
import type { TimeWindow } from '../timeline/time-window.ts';
import type { Mark } from '../weight/picture-view.ts';
import type { Lane } from './lanes.ts';
import { leftBars } from './life-view.ts';
import { ChangeMark, NoteMark, SeenMark } from './signs.tsx';

export function LifeKey(props: {
  lanes: { readonly all: readonly Lane[] };
  events: readonly LifeEvent[];
  life: Lifeline;
  marks: readonly Mark[];
  window: TimeWindow;
}) {
  const { lanes, events, life, marks, window } = props;
  const t = words().lifeline.key;
  const weight = words().bodyWeight.picture.key;
  const fed = lanes.all
    .flatMap((l) => l.spans)
    .flatMap(({ span }) => (span.what.is === 'batch' ? span.what.fed : []));
  const changes = fed.some((b) => b.change.kind === 'foods' || b.change.kind === 'mix');
  const bars = leftBars(life.left, window);
  const seen = new Set(events.flatMap((e) => (e.what.is === 'offered' ? e.what.offering.seen : [])));
  const notes = new Set(events.flatMap((e) => (e.what.is === 'note' ? e.what.note.kind : [])));
  return (
    <p className="picture-key">
      {marks.some((m) => m.unlikely) && (
        <Sign words={weight.unlikely}>
          <circle className="weight-doubt" cx={10} cy={9} r={5} />
        </Sign>
      )}
      {events.some((e) => e.what.is === 'alert') && (
        <Sign words={weight.alert}>
          <path className="weight-alert" d="M3 3h14l-7 12z" />
        </Sign>
      )}
      {changes && (
        <Sign words={t.change}>
          <ChangeMark x={10} y={9} />
        </Sign>
      )}
      {fed.some((b) => b.assumed) && (
        <Sign words={t.assumed}>
          <rect className="life-bar even assumed" x={1} y={3} width={18} height={12} rx={3} />
        </Sign>
      )}
      {SEEN.filter((s) => seen.has(s)).map((s) => (
        <Sign key={s} words={t.seen[s]}>
          <SeenMark seen={s} x={10} y={9} />
        </Sign>
      ))}
      {bars.some((b) => !b.atLeast) && (
        <Sign words={t.left}>
          <rect className="left-bar" x={5} y={3} width={10} height={14} />
        </Sign>
      )}
      {bars.some((b) => b.atLeast) && (
        <Sign words={t.atLeast}>
          <rect className="left-bar at-least" x={5} y={3} width={10} height={14} />
        </Sign>
      )}
      {notes.has('seen') && (
        <Sign words={t.seenNote}>
          <NoteMark kind="seen" x={10} y={9} />
        </Sign>
      )}
      {notes.has('vet') && (
        <Sign words={t.vetNote}>
          <NoteMark kind="vet" x={10} y={9} />
        </Sign>
      )}
      <Sign words={t.today}>
        <line className="today-line" x1={10} x2={10} y1={0} y2={18} />
      </Sign>
    </p>
  );
}

function Sign({ words: said, children }: { words: string; children: ReactNode }) {
  return (
    <span>
      <svg viewBox="0 0 20 18" width="20" height="18" aria-hidden="true">
        {children}
      </svg>
      {said}
    </span>
  );
}
