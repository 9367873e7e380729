/** The page itself, the same on the screen and on paper. */
import { ageInWords } from '../../../care/animal/age.ts';
import type { Condition } from '../../../care/model.ts';
import type { Animal } from '../../../household/model.ts';
import type { VetPage } from '../../../household/reckon/care/vet-page.ts';
import { refusedFoods } from '../../../household/reckon/mix/refusals.ts';
import { LIFE_STAGES, speciesWord } from '../../../targets/life-stage.ts';
import { words } from '../../../words/words.ts';
import { Fact } from '../../shared/Fact.tsx';
import { useMixDraft } from '../../store/mix-draft.tsx';
import { AnimalPicture } from '../about/AnimalPicture.tsx';
import { clipped } from './clipped.ts';
import type { VetFood } from './useVetFood.ts';
import { VetContentsTable } from './VetContentsTable.tsx';
import { VetFoodADay } from './VetFoodADay.tsx';
import { VetLists } from './VetLists.tsx';
import { VetWeights } from './VetWeights.tsx';
import './vet.css';

interface Props {
  animal: Animal;
  page: VetPage;
  food: VetFood;
}

export function VetSheet({ animal, page, food }: Props) {
  const { house } = useMixDraft();
  const { vetPage: t, figures: f } = words();
  return (
    <article className="vet-sheet">
      <header>
        <AnimalPicture photo={house.photos.find((p) => p.id === animal.id)} alt="" size="page" />
        <div>
          <h3>{animal.name}</h3>
          <p>{t.madeOn(f.day(page.today))}</p>
        </div>
      </header>
      <Facts animal={animal} page={page} />
      <VetFoodADay food={food} page={page} />
      <VetContentsTable food={food} />
      <VetWeights animal={animal} page={page} />
      <VetLists page={page} />
      <Contacts />
    </article>
  );
}

function Facts({ animal, page }: Pick<Props, 'animal' | 'page'>) {
  const { house } = useMixDraft();
  const { vetPage: t, animals, figures: f } = words();
  const { last } = page.weights;
  const { gone } = animal;
  const refused = refusedFoods(house, animal).map((r) => r.name);
  const gonePart = gone
    ? [(gone.how === 'died' ? t.facts.died : t.facts.moved)(f.day(gone.on, page.today))]
    : [];
  return (
    <dl className="vet-facts">
      <Fact
        name={t.facts.species}
        words={[animals.kind(speciesWord(animal.species), LIFE_STAGES[animal.lifeStage]), ...gonePart].join(
          '; ',
        )}
      />
      <Fact name={t.facts.age} words={ageInWords(animal.born, gone?.on ?? page.today) ?? t.notKnown} />
      <Fact name={t.facts.sex} words={animal.sex ? t.facts.sexes[animal.sex] : t.notKnown} />
      <Fact
        name={t.facts.weight}
        words={last ? t.facts.weightOn(last.grams, f.day(last.day, page.today)) : t.notKnown}
      />
      <Fact
        name={t.facts.health}
        words={
          page.conditions.length > 0
            ? page.conditions.map((c) => conditionWords(c, page)).join('; ')
            : t.facts.healthNone
        }
      />
      {refused.length > 0 && <Fact name={t.facts.refuses} words={firstOf(refused)} />}
    </dl>
  );
}

/** As many names as one line has room for. */
const NAMES = 8;

function firstOf(names: readonly string[]): string {
  const t = words().vetPage;
  const shown = names.slice(0, NAMES).map(clipped).join(', ');
  return names.length > NAMES ? `${shown} ${t.more(names.length - NAMES)}` : shown;
}

function conditionWords({ what, since, vet, note }: Condition, { today }: VetPage): string {
  const { vetPage: t, animals, figures: f } = words();
  const name = what === 'other' && note ? note : animals.conditions.names[what];
  const said = t.facts.since(name, f.day(since, today));
  return vet ? t.facts.vetSaid(said) : said;
}

/** The usual vet, and a line for the keeper's own name and number, which are kept nowhere. */
function Contacts() {
  const { house } = useMixDraft();
  const t = words().vetPage.contacts;
  const vet = house.keeper[0]?.vet;
  const known = [vet?.name, vet?.phone, vet?.emergency && t.emergency(vet.emergency)].filter(
    (part) => part !== undefined && part !== '',
  );
  return (
    <footer>
      <p>
        {t.vet}: {known.length > 0 ? known.join(', ') : <span className="vet-blank" />}
      </p>
      <p>
        {t.keeper}: <span className="vet-blank" />
      </p>
    </footer>
  );
}
