/** What goes on, what is to dry, and what was dried; each leads to its page. */
import type { RunLine } from '../../household/reckon/drying/drying-runs.ts';
import type { LotStock } from '../../kitchen/cupboard/cupboard.ts';
import { dayInWords } from '../../kitchen/days.ts';
import { sayGrams } from '../../kitchen/shopping/pack-weight.ts';
import { words } from '../../words/words.ts';
import { useParts } from '../shared/parts.tsx';
import { linkTo } from '../shared/route.ts';
import { Contained } from '../shared/trouble/Contained.tsx';
import { clockOf } from '../shared/words/clock.ts';
import { Sentence } from '../shared/words/Sentence.tsx';
import { checkLine } from './checks-due.ts';
import { RunMark } from './RunMark.tsx';
import { sayWater } from './view-model.ts';

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
  const toDry = useParts(fresh, { part: PART, always: (l) => here(l.lot.id) });
  const past = useParts(ended, { part: PART, always: (l) => here(l.run.id) });
  const t = words().drying.list;
  return (
    <>
      {open.length > 0 && (
        <section>
          <h2>{t.now}</h2>
          <ul className="food-list">
            {open.map((line) => (
              <Line key={line.run.id} line={line} shown={shown} wordsOf={openWords} now={now} />
            ))}
          </ul>
        </section>
      )}
      <section>
        <h2>{t.toDry}</h2>
        {fresh.length === 0 ? (
          <p className="empty">
            <Sentence
              of={t.nothingFresh}
              with={{ add: (text) => <a href={linkTo('cupboard', 'new')}>{text}</a> }}
            />
          </p>
        ) : (
          <ul className="food-list">
            {toDry.shown.map(({ lot, grams }) => (
              <li key={lot.id}>
                <a href={linkTo('drying', lot.id)} aria-current={lot.id === shown ? 'true' : undefined}>
                  <span>{lot.name}</span>
                  <small>{freshWords(lot, grams)}</small>
                </a>
              </li>
            ))}
          </ul>
        )}
        {toDry.more}
      </section>
      {ended.length > 0 && (
        <section>
          <h2>{t.finished}</h2>
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
      <Contained what={words().drying.screen.thisRun} of={props.line.run}>
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

/** How much there is of a fresh pack, where, and since when. */
function freshWords(lot: LotStock['lot'], grams: number): string {
  const t = words().drying.list;
  const has = grams < lot.grams ? t.leftOf(sayGrams(grams), sayGrams(lot.grams)) : sayGrams(grams);
  const where = lot.frozen ? t.inFreezer(has) : has;
  return (lot.driedIn ? t.halfDried : t.bought)(where, dayInWords(lot.boughtOn));
}

function openWords({ run, state }: RunLine, now: number): string {
  return state === 'weighed' ? words().drying.state.weighed : (checkLine(run, now)?.words ?? '');
}

function endedWords({ run, state, dried }: RunLine, now: number): string {
  const when = clockOf(run.endedAt!, now);
  const t = words().drying.list;
  if (state === 'lost') return t.thrownAway(when);
  const [before, after] = [sayGrams(run.gramsBefore), sayGrams(run.gramsAfter!)];
  if (dried?.moisture === undefined) return t.became(before, after, when);
  return t.becameWith(before, after, sayWater(exactly(dried.moisture)), when);
}

const exactly = (moisture: number) => ({ moisture, low: moisture, high: moisture });
