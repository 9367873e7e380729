/** Foods: find one, read its figures, keep one's own. */

import { useEffect, useState } from 'react';
import { Button, Input, Label, SearchField } from 'react-aria-components';
import { tableNote } from '../../foods/food-name.ts';
import type { ReferenceFood } from '../../foods/reference.ts';
import type { OwnFood } from '../../household/model.ts';
import { groupName, OTHER } from '../../household/reckon/mix/mix-edits.ts';
import { isTag } from '../../nutrition/nutrients.ts';
import { words } from '../../words/words.ts';
import { focusWhenThere } from '../shared/focus.ts';
import { useParts } from '../shared/parts.tsx';
import { go, linkTo, useRoute } from '../shared/route.ts';
import { Contained } from '../shared/trouble/Contained.tsx';
import { useMixDraft } from '../store/mix-draft.tsx';
import { useFoodSearch, useFoodSearchNote, useReferenceFoods } from '../worker/engine.ts';
import { type Deleted, Gone } from './DeleteFood.tsx';
import { FoodPage } from './FoodPage.tsx';
import { OwnFoodForm } from './OwnFoodForm.tsx';
import '../shared/styles/list-detail.css';

const NEW = 'new';

export function FoodsScreen({ shown }: { shown: string | undefined }) {
  const { house } = useMixDraft();
  const [query, setQuery] = useState('');
  /** As it stood when its form was opened; the form stays, whatever becomes of it elsewhere. */
  const [editing, setEditing] = useState<OwnFood>();
  const [deleted, setDeleted] = useState<Deleted>();
  const { data: found = [], isPending, error } = useFoodSearch(query);
  const note = useFoodSearchNote(query);
  const byRef = useReferenceFoods(shown && shown !== NEW ? [shown] : []);
  const sought = query.trim().toLowerCase();
  const t = words().foods;
  const mine = house.foods.filter((f) => f.name.toLowerCase().includes(sought));
  const own = house.foods.find((f) => f.id === shown);
  /** A figure of an own food that the address asks for: the form opens at it, once. */
  const [, , figure] = useRoute();
  const asked = own && figure !== undefined && isTag(figure) ? `${own.id} ${figure}` : undefined;
  const [opened, setOpened] = useState<string>();
  if (asked !== opened) {
    setOpened(asked);
    if (asked !== undefined) setEditing(own);
  }
  useEffect(() => {
    if (asked !== undefined) focusWhenThere(`[data-amount="${asked.split(' ')[1]}"] select`);
  }, [asked]);
  const reference = shown ? byRef.get(shown) : undefined;

  function detail() {
    if (shown === NEW) return <OwnFoodForm key={NEW} onDone={(id) => (id ? go('foods', id) : go('foods'))} />;
    if (editing && editing.id === shown)
      return <OwnFoodForm key={editing.id} food={editing} onDone={() => setEditing(undefined)} />;
    if (own)
      return (
        <FoodPage
          key={own.id}
          food={{ ...own, ref: own.id }}
          own={own}
          onEdit={() => setEditing(own)}
          onDeleted={setDeleted}
        />
      );
    if (reference) return <FoodPage key={reference.ref} food={reference} />;
    return undefined;
  }
  const page = detail();

  return (
    <main id="main" className={`foods-screen ${page ? 'has-detail' : ''}`}>
      <section className="finder" aria-label={t.find}>
        <h1>{t.title}</h1>
        <SearchField value={query} onChange={setQuery} className="search">
          <Label>{t.search}</Label>
          <Input placeholder={t.example} />
        </SearchField>
        <p className="hint" aria-live="polite">
          {error
            ? error.message
            : isPending
              ? t.loading
              : sought
                ? t.found(found.length + mine.length)
                : t.byGroup}
        </p>
        {deleted && <Gone deleted={deleted} onBack={() => setDeleted(undefined)} />}
        <section className="own-foods">
          <div className="list-head">
            <h2>{t.own}</h2>
            <Button className="button small" onPress={() => go('foods', NEW)}>
              {t.new}
            </Button>
            <a className="button small" href={linkTo('household', 'table')}>
              {t.fromTable}
            </a>
          </div>
          <FoodList
            foods={mine.map(ownLine)}
            shown={shown}
            from={sought}
            pick={() => setEditing(undefined)}
          />
        </section>
        {sought ? (
          <section>
            <h2>{t.reference}</h2>
            {note && <p role="status">{note}</p>}
            <FoodList foods={found.map(referenceLine)} shown={shown} />
            {!isPending && found.length === 0 && !note && <p>{t.nothing}</p>}
          </section>
        ) : (
          byGroup(found).map(([group, foods]) => (
            <section key={group}>
              <h2>{groupName(group)}</h2>
              <FoodList foods={foods.map(referenceLine)} shown={shown} />
            </section>
          ))
        )}
      </section>
      <section className="detail" aria-label={t.one}>
        {page ? (
          <>
            <a className="back" href={linkTo('foods')}>
              {t.all}
            </a>
            <Contained what={t.thisOne} of={own ?? reference}>
              {page}
            </Contained>
          </>
        ) : (
          <p className="empty">{t.choose}</p>
        )}
      </section>
    </main>
  );
}

interface Line {
  id: string;
  name: string;
  note: string;
  invented?: boolean;
}

/** Foods shown at once. */
const PART = 40;

function FoodList(props: {
  foods: readonly Line[];
  shown: string | undefined;
  from?: string;
  pick?(): void;
}) {
  const { foods, shown, from, pick } = props;
  const parts = useParts(foods, {
    part: PART,
    ...(from !== undefined && { from }),
    always: (f) => f.id === shown,
  });
  return (
    <>
      <ul className="food-list">
        {parts.shown.map((f) => (
          <li key={f.id}>
            <a href={linkTo('foods', f.id)} aria-current={f.id === shown ? 'true' : undefined} onClick={pick}>
              <span>{f.name}</span> {f.invented && <span className="tag">{words().foods.invented}</span>}
              <small>{f.note}</small>
            </a>
          </li>
        ))}
      </ul>
      {parts.more}
    </>
  );
}

function ownLine(f: OwnFood): Line {
  const t = words().foods;
  const kind = f.kind === 'pellet' ? t.pellet : f.group ? groupName(f.group) : t.ownFood;
  return { id: f.id, name: f.name, note: kind, invented: f.invented };
}

function referenceLine(f: ReferenceFood): Line {
  return { id: f.ref, name: f.name, note: tableNote(f) };
}

function byGroup(foods: readonly ReferenceFood[]): [string, ReferenceFood[]][] {
  const groups = new Map<string, ReferenceFood[]>();
  for (const food of foods) {
    const group = food.group ?? OTHER;
    groups.set(group, [...(groups.get(group) ?? []), food]);
  }
  return [...groups];
}
