/** Dialog to add foods: the keeper's own and the reference foods, searched as you type. */
import { useState } from 'react';
import {
  Button,
  Dialog,
  DialogTrigger,
  Heading,
  Input,
  Label,
  Modal,
  ModalOverlay,
  SearchField,
} from 'react-aria-components';
import type { Ingredient } from '../../formulation/problem.ts';
import type { Mix, OwnFood } from '../../household/model.ts';
import { useFoodSearch } from '../data/engine.ts';
import { groupName, ingredientFromOwn, ingredientFromReference, OTHER } from '../mix/edits.ts';
import { tableNote } from '../mix/table-name.ts';

export function FoodPicker({
  mix,
  own,
  onAdd,
}: {
  mix: Mix;
  own: readonly OwnFood[];
  onAdd(food: Ingredient): void;
}) {
  return (
    <DialogTrigger>
      <Button className="button">Add a food</Button>
      <ModalOverlay className="overlay" isDismissable>
        <Modal className="modal">
          <Dialog className="dialog">
            {({ close }) => (
              <>
                <div className="dialog-head">
                  <Heading slot="title">Add a food</Heading>
                  <Button className="quiet-button" onPress={close}>
                    Done
                  </Button>
                </div>
                <Finder mix={mix} own={own} onAdd={onAdd} />
              </>
            )}
          </Dialog>
        </Modal>
      </ModalOverlay>
    </DialogTrigger>
  );
}

function Finder({ mix, own, onAdd }: { mix: Mix; own: readonly OwnFood[]; onAdd(food: Ingredient): void }) {
  const [query, setQuery] = useState('');
  const { data: found = [], isFetching } = useFoodSearch(query, 40);
  const words = query.trim().toLowerCase();
  const mine = own.filter((f) => f.kind === 'mix' && f.name.toLowerCase().includes(words));
  const there = new Set(mix.problem.foods.flatMap((f) => [f.id, f.ref ?? f.id]));
  const offers = [
    ...mine.map((f) => ({
      key: f.id,
      name: f.name,
      group: f.group,
      note: 'own food',
      make: () => ingredientFromOwn(f),
    })),
    ...found.map((f) => ({
      key: f.ref,
      name: f.name,
      group: f.group,
      note: f.plain ? '' : tableNote(f),
      make: () => ingredientFromReference(f),
    })),
  ];
  return (
    <>
      <SearchField value={query} onChange={setQuery} autoFocus className="search">
        <Label>Search foods</Label>
        <Input placeholder="oats, lentils, dandelion…" />
      </SearchField>
      <p className="hint" aria-live="polite">
        {isFetching ? 'Searching…' : `${offers.length} foods`}
      </p>
      <ul className="offers">
        {offers.map((o) => (
          <li key={o.key}>
            <span className="offer-name">
              {o.name}{' '}
              <small>
                {[o.group ? groupName(o.group) : groupName(OTHER), o.note].filter(Boolean).join(' · ')}
              </small>
            </span>
            <Button
              className="button small"
              isDisabled={there.has(o.key)}
              aria-label={there.has(o.key) ? `${o.name} is in the mix` : `Add ${o.name}`}
              onPress={() => onAdd(o.make())}
            >
              {there.has(o.key) ? 'In the mix' : 'Add'}
            </Button>
          </li>
        ))}
      </ul>
    </>
  );
}
