/** The text of the card: the same on the screen and on paper. */
import type { Keeper } from '../../../care/model.ts';
import type { SitterEntry } from '../../../household/reckon/care/sitter-card.ts';
import type { Day } from '../../../kitchen/model.ts';
import { LIFE_STAGES, speciesWord } from '../../../targets/life-stage.ts';
import { words } from '../../../words/words.ts';
import { stopWords } from '../food/stop-words.ts';

export function CardText({
  entries,
  keeper,
  today,
}: {
  entries: readonly SitterEntry[];
  keeper: Keeper | undefined;
  today: Day;
}) {
  const t = words().sitter.onCard;
  const { figures: f, sitter } = words();
  const vet = keeper?.vet;
  return (
    <>
      <header className="card-top">
        <b className="card-title">{sitter.title}</b>
        <span>
          {t.from} <Line /> {t.until} <Line />
        </span>
        <span>{t.asOf(f.day(today))}</span>
      </header>
      <dl className="card-vet">
        <div>
          <dt>{t.vet}</dt>
          <dd>{vet?.name ?? <Line />}</dd>
        </div>
        <div>
          <dt>{t.phone}</dt>
          <dd>{vet?.phone ?? <Line />}</dd>
        </div>
        <div>
          <dt>{t.emergency}</dt>
          <dd>{vet?.emergency ?? <Line />}</dd>
        </div>
        <div>
          <dt>{t.reach}</dt>
          <dd>
            <Line />
          </dd>
        </div>
      </dl>
      <div className={`card-animals ${entries.length > 2 ? 'many' : ''}`}>
        {entries.map((entry) => (
          <OneAnimal key={entry.animal.id} entry={entry} />
        ))}
      </div>
      <div className="card-notes">
        <section className="wide-note">
          <b>{t.everyDay}</b>
          <List of={t.daily} />
          <p>
            <b>{t.nothingElse}</b>
          </p>
        </section>
        <section>
          <b>{t.look}</b>
          <List of={t.looks} />
        </section>
        <section className="card-call">
          <b>{t.call}</b>
          <List of={t.calls} />
        </section>
      </div>
      {keeper?.forSitter && (
        <section className="card-words">
          <b>{t.words}</b>
          <p>{keeper.forSitter}</p>
        </section>
      )}
    </>
  );
}

function OneAnimal({ entry }: { entry: SitterEntry }) {
  const t = words().sitter.onCard;
  const { animals, figures: f } = words();
  const { animal, foods, together, weight, conditions, never, leaves, noSugar, stop } = entry;
  const nevers = [...never, ...(noSugar ? [t.sweet] : [])];
  const about = [
    animals.kind(speciesWord(animal.species), LIFE_STAGES[animal.lifeStage]),
    // A number stays with its unit.
    ...(weight === undefined ? [] : [t.weighs(weight).replaceAll(' ', '\u00a0')]),
    ...conditions.map((c) => t.conditions[c.what]),
  ].join('; ');
  return (
    <section className="card-animal">
      <p>
        <b className="card-name">{animal.name}</b> <small>{about}</small>
      </p>
      {stop && (
        <p className="card-stop">
          <b>! {stopWords(stop, animal.name)}</b>
        </p>
      )}
      <ul className="card-foods">
        {foods.length === 0 && (
          <li>
            {t.nothingKnown} {animal.dailyGrams === undefined ? <Line /> : f.grams(animal.dailyGrams, 1)}
          </li>
        )}
        {foods.map((food) => (
          <li key={food.kind + food.name}>
            {food.grams === undefined ? (
              <>
                {food.kind === 'beside' ? t.someOf(food.name) : t.someMix(food.name)} <Line />
              </>
            ) : (
              { mix: t.ofMix, old: t.ofOld, beside: t.ofFood }[food.kind](food.grams, food.name)
            )}
          </li>
        ))}
        {together !== undefined && foods.length > 1 && <li className="card-sum">{t.together(together)}</li>}
      </ul>
      {leaves.length > 0 && (
        <p className="card-leaves">
          {t.leaves}: {f.list(leaves)}
        </p>
      )}
      {nevers.length > 0 && (
        <p className="card-never">
          <b>{t.never}:</b> {f.list(nevers)}
        </p>
      )}
    </section>
  );
}

function List({ of }: { of: readonly string[] }) {
  return (
    <ul>
      {of.map((line) => (
        <li key={line}>{line}</li>
      ))}
    </ul>
  );
}

/** A line to write on. */
function Line() {
  return <i className="card-line" />;
}
