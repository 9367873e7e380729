/** Dialog to add what is fed beside the mix: the keeper's pellets and foods, and the reference foods. */
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
import type { ReferenceFood } from '../../foods/reference.ts';
import type { Beside, Problem } from '../../formulation/problem.ts';
import type { Mix, OwnFood } from '../../household/model.ts';
import { useFoodSearch } from '../data/engine.ts';
import { besideFromOwn, ingredientFromReference } from '../mix/edits.ts';
import { canBeAirDry, FRESH_WATER, roomFor } from '../mix/ration.ts';
import { tableNote } from '../mix/table-name.ts';

/** What a food beside begins with, percent of the ration; a pellet is half of it (common practice, no source). */
const START = { pellet: 50, dry: 5, fresh: 1 } as const;

interface Props {
  mix: Mix;
  own: readonly OwnFood[];
  onAdd(food: Beside): void;
}

export function RationPicker(props: Props) {
  return (
    <DialogTrigger>
      <Button className="button ration-add">Add what is fed beside</Button>
      <ModalOverlay className="overlay" isDismissable>
        <Modal className="modal">
          <Dialog className="dialog">
            {({ close }) => (
              <>
                <div className="dialog-head">
                  <Heading slot="title">Fed beside the mix</Heading>
                  <Button className="quiet-button" onPress={close}>
                    Done
                  </Button>
                </div>
                <Finder {...props} />
              </>
            )}
          </Dialog>
        </Modal>
      </ModalOverlay>
    </DialogTrigger>
  );
}

interface Offer {
  readonly id: string;
  readonly name: string;
  readonly note: string;
  make(): Beside;
}

function Finder({ mix, own, onAdd }: Props) {
  const [query, setQuery] = useState('');
  const { data: found = [], isFetching } = useFoodSearch(query, 40);
  const words = query.trim().toLowerCase();
  const mine = own.filter((f) => f.name.toLowerCase().includes(words));
  const offers: Offer[] = [
    ...mine
      .toSorted((a, b) => Number(b.kind === 'pellet') - Number(a.kind === 'pellet'))
      .map((f) => ({
        id: f.id,
        name: f.name,
        note: `${f.kind === 'pellet' ? 'pellet' : 'own food'}${f.invented ? ', invented' : ''}`,
        make: () => fromOwn(f, mix.problem),
      })),
    ...found.map((f) => ({
      id: idOf(f),
      name: f.name,
      note: [isFresh(f.composition.WATER) && 'fresh', !f.plain && tableNote(f)].filter(Boolean).join(' · '),
      make: () => fromReference(f, mix.problem),
    })),
  ];
  const there = (id: string) =>
    mix.problem.beside.some((b) => b.id === id)
      ? 'Fed'
      : mix.problem.foods.some((f) => f.id === id)
        ? 'In the mix'
        : undefined;
  return (
    <>
      <SearchField value={query} onChange={setQuery} autoFocus className="search">
        <Label>Search foods</Label>
        <Input placeholder="cucumber, dandelion, a pellet…" />
      </SearchField>
      <p className="hint" aria-live="polite">
        {isFetching ? 'Searching…' : `${offers.length} foods`}
      </p>
      <ul className="offers">
        {offers.map((o) => (
          <li key={o.id}>
            <span className="offer-name">
              {o.name} <small>{o.note}</small>
            </span>
            <Button
              className="button small"
              isDisabled={there(o.id) !== undefined || roomFor(mix.problem, o.id) === 0}
              aria-label={there(o.id) ? `${o.name}: ${there(o.id)}` : `Add ${o.name}`}
              onPress={() => onAdd(o.make())}
            >
              {there(o.id) ?? 'Add'}
            </Button>
          </li>
        ))}
      </ul>
    </>
  );
}

/** The same food may be in the mix too, so beside it has an id of its own. */
function idOf(food: ReferenceFood): string {
  return `beside-${ingredientFromReference(food).id}`;
}

function isFresh(water: number | undefined): boolean {
  return canBeAirDry(water) && water >= FRESH_WATER;
}

function fromOwn(food: OwnFood, problem: Problem): Beside {
  const fresh = isFresh(food.composition.WATER);
  const start = fresh ? START.fresh : food.kind === 'pellet' ? START.pellet : START.dry;
  return airDry(besideFromOwn(food, Math.min(start, roomFor(problem, food.id))), fresh);
}

function fromReference(food: ReferenceFood, problem: Problem): Beside {
  const fresh = isFresh(food.composition.WATER);
  const share_of_ration = Math.min(fresh ? START.fresh : START.dry, roomFor(problem, idOf(food)));
  return airDry({ id: idOf(food), name: food.name, ref: food.ref, share_of_ration }, fresh);
}

function airDry(food: Beside, fresh: boolean): Beside {
  return fresh ? { ...food, counts_as: 'air dry' } : food;
}
