/** The lots of the cupboard by food, first to be used first, each with what is left and how it stands. */
import { useState } from 'react';
import { Button, Input, Label, SearchField } from 'react-aria-components';
import type { FoodLots, LotLine } from '../../household/reckon/cupboard/lots-by-food.ts';
import { dayInWords } from '../../kitchen/days.ts';
import type { Day } from '../../kitchen/model.ts';
import { sayGrams } from '../../kitchen/shopping/pack-weight.ts';
import { lotWords } from '../shared/lots/lot-words.ts';
import { useParts } from '../shared/parts.tsx';
import { linkTo } from '../shared/route.ts';
import { Contained } from '../shared/trouble/Contained.tsx';
import { LotMark } from './LotMark.tsx';
import { SHORT, shelvesOf, withLinesOnly } from './view-model.ts';

interface Props {
  foods: readonly FoodLots[];
  shown: string | undefined;
  day: Day;
  pick(): void;
}

export function LotList({ foods: all, ...props }: Props) {
  const [words, setWords] = useState('');
  const { foods, usedUp } = shelvesOf(all, words);
  const lines = foods.flatMap((f) => f.lots);
  const parts = useParts(lines, {
    part: SHORT,
    of: 'lots',
    from: words,
    always: (l) => l.lot.id === props.shown,
  });
  if (all.length === 0)
    return (
      <p className="empty">
        No lot is kept yet. Add what stands in the cupboard, one lot for each pack or jar.
      </p>
    );
  const short = all.reduce((sum, f) => sum + f.lots.length, 0) <= SHORT;
  return (
    <>
      {!short && (
        <SearchField value={words} onChange={setWords} className="search">
          <Label>Search lots</Label>
          <Input placeholder="oats, carrot, a day…" />
        </SearchField>
      )}
      {!short && lines.length + usedUp.length === 0 && <p className="empty">No lot is called so.</p>}
      {withLinesOnly(foods, parts.shown).map((food) => (
        <section key={food.food} className="lot-food">
          <h2>{food.name}</h2>
          <p className="hint">
            {food.ready === 0 ? 'none' : sayGrams(food.ready)} ready
            {food.all > food.ready && ` of ${sayGrams(food.all)}`}
          </p>
          <ul className="food-list">
            {food.lots.map((line) => (
              <Line key={line.lot.id} line={line} {...props} />
            ))}
          </ul>
        </section>
      ))}
      {parts.more}
      {usedUp.length > 0 && <UsedUp key={words} lines={usedUp} open={words.trim() !== ''} {...props} />}
    </>
  );
}

/** Lots that hold nothing any more: kept for what they went into. */
function UsedUp({
  lines,
  open,
  ...props
}: Omit<Props, 'foods'> & { lines: readonly LotLine[]; open: boolean }) {
  const here = lines.some((l) => l.lot.id === props.shown);
  const [all, setAll] = useState(open);
  const parts = useParts(all ? lines : lines.filter((l) => l.lot.id === props.shown), {
    part: SHORT,
    of: 'used-up lots',
    always: (l) => l.lot.id === props.shown,
  });
  return (
    <section className="lot-food">
      <h2>Used up</h2>
      {!all && (
        <Button className="button small" onPress={() => setAll(true)}>
          Show{' '}
          {lines.length === 1
            ? 'the one used-up lot'
            : `the ${lines.length.toLocaleString('en')} used-up lots`}
        </Button>
      )}
      {(all || here) && (
        <ul className="food-list">
          {parts.shown.map((line) => (
            <Line key={line.lot.id} line={line} {...props} />
          ))}
        </ul>
      )}
      {parts.more}
    </section>
  );
}

function Line(props: Omit<Props, 'foods'> & { line: LotLine }) {
  return (
    <li>
      <Contained what="This lot" of={props.line.lot}>
        <LotLink {...props} />
      </Contained>
    </li>
  );
}

function LotLink({ line, shown, day, pick }: Omit<Props, 'foods'> & { line: LotLine }) {
  return (
    <a
      href={linkTo('cupboard', line.lot.id)}
      aria-current={line.lot.id === shown ? 'true' : undefined}
      onClick={pick}
    >
      <span>{line.lot.name}</span>
      {line.first && <span className="tag">use first</span>}
      <small className="lot-state">
        <LotMark kind={line.state.kind} /> {lotWords(line.lot, line.state, day)}
      </small>
      <small>{factsOf(line)}</small>
    </a>
  );
}

function factsOf({ lot, grams }: LotLine): string {
  const left = grams === lot.grams ? sayGrams(grams) : `${sayGrams(grams)} left of ${sayGrams(lot.grams)}`;
  return [
    left,
    `bought ${dayInWords(lot.boughtOn)}`,
    lot.openedOn && `opened ${dayInWords(lot.openedOn)}`,
    lot.bestBefore && `best before ${dayInWords(lot.bestBefore)}`,
    lot.frozen && 'kept in the freezer',
  ]
    .filter(Boolean)
    .join(' · ');
}
