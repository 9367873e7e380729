/** The lots of the cupboard by food, first to be used first, each with what is left and how it stands. */
import { useState } from 'react';
import { Button, Input, Label, SearchField } from 'react-aria-components';
import type { FoodLots, LotLine } from '../../household/reckon/cupboard/lots-by-food.ts';
import type { PelletPack, PelletStock } from '../../household/reckon/cupboard/pellet-stock.ts';
import { dayInWords } from '../../kitchen/days.ts';
import type { Day } from '../../kitchen/model.ts';
import { sayGrams } from '../../kitchen/shopping/pack-weight.ts';
import { words } from '../../words/words.ts';
import { lotWords } from '../shared/lots/lot-words.ts';
import { useParts } from '../shared/parts.tsx';
import { linkTo } from '../shared/route.ts';
import { Contained } from '../shared/trouble/Contained.tsx';
import { LotMark } from './LotMark.tsx';
import { lastsWords, packLeft, packState } from './pellet-words.ts';
import { SHORT, shelvesOf, withLinesOnly } from './view-model.ts';

interface Props {
  foods: readonly FoodLots[];
  /** How the packs of what is fed beside the mixes stand. */
  pellets: readonly PelletStock[];
  shown: string | undefined;
  day: Day;
  pick(): void;
}

export function LotList({ foods: all, ...props }: Props) {
  const t = words().cupboard.list;
  const [typed, setTyped] = useState('');
  const { foods, usedUp } = shelvesOf(all, typed);
  const lines = foods.flatMap((f) => f.lots);
  const parts = useParts(lines, {
    part: SHORT,
    from: typed,
    always: (l) => l.lot.id === props.shown,
  });
  if (all.length === 0) return <p className="empty">{t.empty}</p>;
  const shown = withLinesOnly(foods, parts.shown);
  const isBeside = (f: FoodLots) => props.pellets.some((p) => p.food === f.food);
  const beside = shown.filter(isBeside);
  const mixed = shown.filter((f) => !isBeside(f));
  const short = all.reduce((sum, f) => sum + f.lots.length, 0) <= SHORT;
  return (
    <>
      {!short && (
        <SearchField value={typed} onChange={setTyped} className="search">
          <Label>{t.search}</Label>
          <Input placeholder={t.searchExample} />
        </SearchField>
      )}
      {!short && lines.length + usedUp.length === 0 && <p className="empty">{t.none}</p>}
      {beside.length > 0 && (
        <section className="lot-beside" aria-label={words().pelletStock.section}>
          <h2>{words().pelletStock.section}</h2>
          {beside.map((food) => (
            <Beside key={food.food} food={food} {...props} />
          ))}
        </section>
      )}
      {mixed.map((food) => (
        <section key={food.food} className="lot-food">
          {!saysItself(food) && (
            <>
              <h2>{food.name}</h2>
              <p className="hint">{readyWords(food)}</p>
            </>
          )}
          <ul className="food-list">
            {food.lots.map((line) => (
              <Line key={line.lot.id} line={line} {...props} />
            ))}
          </ul>
        </section>
      ))}
      {parts.more}
      {usedUp.length > 0 && <UsedUp key={typed} lines={usedUp} open={typed.trim() !== ''} {...props} />}
    </>
  );
}

/** The packs of one food that is fed as it is, in the order in which they are fed, and until when they last. */
function Beside({ food, ...props }: Omit<Props, 'foods'> & { food: FoodLots }) {
  const stock = props.pellets.find((p) => p.food === food.food);
  const place = (l: LotLine) => stock?.packs.findIndex((p) => p.lot.id === l.lot.id) ?? 0;
  return (
    <section className="lot-food" aria-label={food.name}>
      <h3>{food.name}</h3>
      <p className="hint">{stock && lastsWords(stock, props.day)}</p>
      <ul className="food-list">
        {food.lots
          .toSorted((a, b) => place(a) - place(b))
          .map((line) => (
            <Line key={line.lot.id} line={line} {...props} />
          ))}
      </ul>
    </section>
  );
}

/** Lots that hold nothing any more: kept for what they went into. */
function UsedUp({
  lines,
  open,
  ...props
}: Omit<Props, 'foods'> & { lines: readonly LotLine[]; open: boolean }) {
  const t = words().cupboard.list;
  const here = lines.some((l) => l.lot.id === props.shown);
  const [all, setAll] = useState(open);
  const parts = useParts(all ? lines : lines.filter((l) => l.lot.id === props.shown), {
    part: SHORT,
    always: (l) => l.lot.id === props.shown,
  });
  return (
    <section className="lot-food">
      <h2>{t.usedUp}</h2>
      {!all && (
        <Button className="button small" onPress={() => setAll(true)}>
          {t.showUsedUp(lines.length)}
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
      <Contained what={words().cupboard.thisPack} of={props.line.lot}>
        <LotLink {...props} />
      </Contained>
    </li>
  );
}

function LotLink({ line, pellets, shown, day, pick }: Omit<Props, 'foods'> & { line: LotLine }) {
  const pack = pellets.flatMap((p) => p.packs).find((p) => p.lot.id === line.lot.id);
  return (
    <a
      href={linkTo('cupboard', line.lot.id)}
      aria-current={line.lot.id === shown ? 'true' : undefined}
      onClick={pick}
    >
      <span>{line.lot.name}</span>
      {line.first && !pack && <span className="tag">{words().cupboard.list.first}</span>}
      <small className="lot-state">
        <LotMark kind={line.state.kind} /> {(pack && packState(pack)) ?? lotWords(line.lot, line.state, day)}
      </small>
      <small>{factsOf(line, pack, day)}</small>
    </a>
  );
}

/** Whether the line of its one pack says all that a heading would. */
const saysItself = ({ name, lots }: FoodLots) => lots.length === 1 && lots[0]?.lot.name === name;

function readyWords({ ready, all }: FoodLots): string {
  const t = words().cupboard.list;
  const more = all > ready ? sayGrams(all) : undefined;
  return ready === 0 ? t.noneReady(more) : t.ready(sayGrams(ready), more);
}

function factsOf({ lot, grams }: LotLine, pack: PelletPack | undefined, day: Day): string {
  const t = words().cupboard.list;
  const came = lot.form === 'dried' ? t.dried : t.bought;
  return [
    pack
      ? packLeft(pack)
      : grams === lot.grams
        ? sayGrams(grams)
        : t.left(sayGrams(grams), sayGrams(lot.grams)),
    came(dayInWords(lot.boughtOn, day)),
    lot.openedOn && t.opened(dayInWords(lot.openedOn, day)),
    lot.bestBefore && t.best(dayInWords(lot.bestBefore, day)),
    lot.frozen && t.inFreezer,
  ]
    .filter(Boolean)
    .join(' · ');
}
