/** Foods: find one, read its figures, keep one's own. */

import { useState } from 'react';
import { Button, Input, Label, SearchField } from 'react-aria-components';
import type { ReferenceFood } from '../../foods/reference.ts';
import type { OwnFood } from '../../household/model.ts';
import { groupName, OTHER } from '../../household/reckon/mix/mix-edits.ts';
import { useParts } from '../shared/parts.tsx';
import { go, linkTo } from '../shared/route.ts';
import { tableNote } from '../shared/table-name.ts';
import { Contained } from '../shared/trouble/Contained.tsx';
import { useMixDraft } from '../store/mix-draft.tsx';
import { useFoodSearch, useFoodSearchNote, useReferenceFoods } from '../worker/engine.ts';
import { FoodPage } from './FoodPage.tsx';
import { OwnFoodForm } from './OwnFoodForm.tsx';
import '../shared/styles/list-detail.css';

const NEW = 'new';

export function FoodsScreen({ shown }: { shown: string | undefined }) {
  const { house } = useMixDraft();
  const [query, setQuery] = useState('');
  /** As it stood when its form was opened; the form stays, whatever becomes of it elsewhere. */
  const [editing, setEditing] = useState<OwnFood>();
  const { data: found = [], isPending, error } = useFoodSearch(query);
  const note = useFoodSearchNote(query);
  const byRef = useReferenceFoods(shown && shown !== NEW ? [shown] : []);
  const words = query.trim().toLowerCase();
  const mine = house.foods.filter((f) => f.name.toLowerCase().includes(words));
  const own = house.foods.find((f) => f.id === shown);
  const reference = shown ? byRef.get(shown) : undefined;

  function detail() {
    if (shown === NEW) return <OwnFoodForm key={NEW} onDone={(id) => (id ? go('foods', id) : go('foods'))} />;
    if (editing && editing.id === shown)
      return <OwnFoodForm key={editing.id} food={editing} onDone={() => setEditing(undefined)} />;
    if (own)
      return (
        <FoodPage key={own.id} food={{ ...own, ref: own.id }} own={own} onEdit={() => setEditing(own)} />
      );
    if (reference) return <FoodPage key={reference.ref} food={reference} />;
    return undefined;
  }
  const page = detail();

  return (
    <main id="main" className={`foods-screen ${page ? 'has-detail' : ''}`}>
      <section className="finder" aria-label="Find a food">
        <h1>Foods</h1>
        <SearchField value={query} onChange={setQuery} className="search">
          <Label>Search foods</Label>
          <Input placeholder="oats, lentils, dandelion…" />
        </SearchField>
        <p className="hint" aria-live="polite">
          {error
            ? error.message
            : isPending
              ? 'Loading the reference foods…'
              : words
                ? `${found.length + mine.length} found`
                : 'Foods keepers use, by group'}
        </p>
        <section className="own-foods">
          <div className="list-head">
            <h2>Own foods and pellets</h2>
            <Button className="button small" onPress={() => go('foods', NEW)}>
              New food
            </Button>
            <a className="button small" href={linkTo('household', 'table')}>
              From a table
            </a>
          </div>
          <FoodList
            foods={mine.map(ownLine)}
            shown={shown}
            of="own foods"
            from={words}
            pick={() => setEditing(undefined)}
          />
        </section>
        {words ? (
          <section>
            <h2>Reference foods</h2>
            {note && <p role="status">{note}</p>}
            <FoodList foods={found.map(referenceLine)} shown={shown} />
            {!isPending && found.length === 0 && !note && (
              <p>Nothing found. Try a shorter or plainer word, or add your own food.</p>
            )}
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
      <section className="detail" aria-label="Food">
        {page ? (
          <>
            <a className="back" href={linkTo('foods')}>
              ‹ All foods
            </a>
            <Contained what="This food" of={own ?? reference}>
              {page}
            </Contained>
          </>
        ) : (
          <p className="empty">Choose a food to see what it holds, or add your own from its label.</p>
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
  of?: string;
  from?: string;
  pick?(): void;
}) {
  const { foods, shown, of = 'foods', from, pick } = props;
  const parts = useParts(foods, {
    part: PART,
    of,
    ...(from !== undefined && { from }),
    always: (f) => f.id === shown,
  });
  return (
    <>
      <ul className="food-list">
        {parts.shown.map((f) => (
          <li key={f.id}>
            <a href={linkTo('foods', f.id)} aria-current={f.id === shown ? 'true' : undefined} onClick={pick}>
              <span>{f.name}</span> {f.invented && <span className="tag">invented</span>}
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
  const kind = f.kind === 'pellet' ? 'pellet' : f.group ? groupName(f.group) : 'own food';
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
