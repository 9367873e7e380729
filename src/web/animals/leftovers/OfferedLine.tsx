/** What had been offered that night, in one line, and its grams to be changed. */
import { Button } from 'react-aria-components';
import type { Household } from '../../../household/model.ts';
import type { MixKnown } from '../../../household/reckon/care/offered.ts';
import { words } from '../../../words/words.ts';
import { NumberInput } from '../../shared/NumberInput.tsx';
import { gramsOffered, type Offer } from './view-model.ts';

export function OfferedLine(props: {
  house: Pick<Household, 'foods' | 'mixes' | 'batches'>;
  offer: Offer;
  mix: MixKnown;
  open: boolean;
  onOpen(open: boolean): void;
  onChange(offer: Offer): void;
}) {
  const { offer, house, open } = props;
  const t = words().leftovers.offered;
  const nameOf = nameIn(house);
  const foods = [
    ...(offer.mix && offer.mix.grams > 0 ? [t.mix(offer.mix.grams, t.theMix)] : []),
    ...offer.beside.filter((b) => b.grams > 0).map((b) => t.food(b.grams, nameOf(b.food))),
  ];
  const change = (next: Partial<Offer>) => props.onChange({ ...offer, ...next });
  return (
    <div className="left-offered">
      <div>
        <span>
          {foods.length > 0 ? t.line(foods, gramsOffered(offer)) : t.nobody}{' '}
          {offer.from === 'usual' && foods.length > 0 && t.usual}
        </span>
        <Button className="quiet-button" aria-expanded={open} onPress={() => props.onOpen(!open)}>
          {open ? t.done : t.change}
        </Button>
      </div>
      {props.mix === 'planned' && <p className="hint">{t.planned}</p>}
      {props.mix === 'unknown' && <p className="hint">{t.unknown}</p>}
      {open && (
        <div className="fields">
          <NumberInput
            label={t.mixUnknown}
            measure="mass"
            min={0}
            max={1000}
            value={offer.mix?.grams}
            onCommit={(grams = 0) => change({ mix: { ...offer.mix, grams } })}
          />
          {offer.beside.map((b) => (
            <NumberInput
              key={b.food}
              label={nameOf(b.food)}
              measure="mass"
              min={0}
              max={1000}
              value={b.grams}
              onCommit={(grams = 0) =>
                change({ beside: offer.beside.map((other) => (other === b ? { ...b, grams } : other)) })
              }
            />
          ))}
        </div>
      )}
    </div>
  );
}

/** What foods fed beside a mix are called. */
function nameIn({ foods, mixes, batches }: Pick<Household, 'foods' | 'mixes' | 'batches'>) {
  return (id: string) =>
    foods.find((own) => own.id === id)?.name ??
    [...mixes, ...batches].flatMap((m) => m.problem.beside).find((b) => b.id === id)?.name ??
    id;
}
