/** What goes on, what is to dry, and what was dried; each leads to its page. */
import type { RunLine } from '../../household/reckon/drying/drying-runs.ts';
import type { LotStock } from '../../kitchen/cupboard/cupboard.ts';
import { dayInWords } from '../../kitchen/days.ts';
import { sayGrams } from '../../kitchen/shopping/pack-weight.ts';
import { useParts } from '../shared/parts.tsx';
import { linkTo } from '../shared/route.ts';
import { Contained } from '../shared/trouble/Contained.tsx';
import { clockOf } from '../shared/words/clock.ts';
import { RunMark } from './RunMark.tsx';
import { checkLine, sayWater } from './view-model.ts';

/** Lines shown at once. */
const PART = 20;

export function RunList(props: {
  runs: readonly RunLine[];
  fresh: readonly LotStock[];
  shown: string | undefined;
  now: number;
}) {
  const { runs, fresh, shown, now } = props;
  const open = runs.filter((r) => r.state === 'drying' || r.state === 'weighed');
  const ended = runs.filter((r) => r.state === 'done' || r.state === 'lost');
  const here = (id: string) => id === shown;
  const toDry = useParts(fresh, { part: PART, of: 'fresh lots', always: (l) => here(l.lot.id) });
  const past = useParts(ended, { part: PART, of: 'finished runs', always: (l) => here(l.run.id) });
  return (
    <>
      {open.length > 0 && (
        <section>
          <h2>Drying now</h2>
          <ul className="food-list">
            {open.map((line) => (
              <Line key={line.run.id} line={line} shown={shown} wordsOf={openWords} now={now} />
            ))}
          </ul>
        </section>
      )}
      <section>
        <h2>To dry</h2>
        {fresh.length === 0 ? (
          <p className="empty">
            Nothing fresh is in the cupboard. <a href={linkTo('cupboard', 'new')}>Add a new lot</a>, form
            “Fresh”.
          </p>
        ) : (
          <ul className="food-list">
            {toDry.shown.map(({ lot, grams }) => (
              <li key={lot.id}>
                <a href={linkTo('drying', lot.id)} aria-current={lot.id === shown ? 'true' : undefined}>
                  <span>{lot.name}</span>
                  <small>
                    {sayGrams(grams)}
                    {grams < lot.grams && ` left of ${sayGrams(lot.grams)}`}
                    {lot.frozen && ', in the freezer'} · {lot.driedIn ? 'half dried' : 'bought'}{' '}
                    {dayInWords(lot.boughtOn)}
                  </small>
                </a>
              </li>
            ))}
          </ul>
        )}
        {toDry.more}
      </section>
      {ended.length > 0 && (
        <section>
          <h2>Finished</h2>
          <ul className="food-list">
            {past.shown.map((line) => (
              <Line key={line.run.id} line={line} shown={shown} wordsOf={endedWords} now={now} />
            ))}
          </ul>
          {past.more}
        </section>
      )}
    </>
  );
}

interface LineProps {
  line: RunLine;
  shown: string | undefined;
  wordsOf(line: RunLine, now: number): string;
  now: number;
}

function Line(props: LineProps) {
  return (
    <li>
      <Contained what="This drying run" of={props.line.run}>
        <RunLink {...props} />
      </Contained>
    </li>
  );
}

function RunLink(props: LineProps) {
  const { run, name, state } = props.line;
  const due = checkLine(run, props.now)?.due === true;
  return (
    <a href={linkTo('drying', run.id)} aria-current={run.id === props.shown ? 'true' : undefined}>
      <span>{name}</span>
      <small className={`lot-state ${due ? 'dry-due' : ''}`}>
        <RunMark kind={due ? 'due' : state} /> {props.wordsOf(props.line, props.now)}
      </small>
    </a>
  );
}

function openWords({ run, state }: RunLine, now: number): string {
  return state === 'weighed' ? 'Weighed: say what becomes of it' : (checkLine(run, now)?.words ?? '');
}

function endedWords({ run, state, dried }: RunLine, now: number): string {
  const when = clockOf(run.endedAt!, now);
  if (state === 'lost') return `Thrown away, ${when}`;
  const water = dried?.moisture === undefined ? '' : `, ${sayWater(exactly(dried.moisture))} water`;
  return `${sayGrams(run.gramsBefore)} became ${sayGrams(run.gramsAfter!)}${water} · ${when}`;
}

const exactly = (moisture: number) => ({ moisture, low: moisture, high: moisture });
