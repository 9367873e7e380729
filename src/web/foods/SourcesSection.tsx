/** Where an own food's figures come from: every source, how they agree, and which of them counts. */
import { useState } from 'react';
import { Button } from 'react-aria-components';
import { withEvidence } from '../../foods/evidence.ts';
import { sourceWords } from '../../foods/source-words.ts';
import { combine } from '../../foods/sources/combine.ts';
import { disagreements } from '../../foods/sources/disagree.ts';
import { pictureOf } from '../../foods/sources/picture.ts';
import type { FoodSource } from '../../foods/sources/source.ts';
import type { OwnFood } from '../../household/model.ts';
import { NUTRIENTS, nutrient, nutrientWord, type Tag } from '../../nutrition/nutrients.ts';
import { words } from '../../words/words.ts';
import { Choice } from '../shared/Choice.tsx';
import { Failed } from '../shared/Failed.tsx';
import { useSaveFood } from '../store/save-food.ts';
import { AddSource } from './AddSource.tsx';
import { DisagreementPicture } from './DisagreementPicture.tsx';

export function SourcesSection({ own }: { own: OwnFood }) {
  const { save, error } = useSaveFood();
  const [adding, setAdding] = useState(false);
  const { foods, common, figures } = words();
  const t = foods.sources;
  const sources = own.evidence?.sources ?? [];
  const keep = (next: readonly FoodSource[]) =>
    void save(withEvidence(own, { ...own.evidence, sources: next }), own).catch(() => {});

  return (
    <section className="sources" aria-label={t.section}>
      <h3>{t.title}</h3>
      {sources.length === 0 && <p>{own.source ? sourceWords(own.source) : t.typed}</p>}
      <ul>
        {sources.map((s) => (
          <li key={s.id}>
            <span>
              {sourceWords(s.name)}
              <small>
                {[
                  t.amounts(countOf(s)),
                  s.basis === 'dry matter' && t.forDry,
                  s.n && t.samples(s.n),
                  s.date && figures.day(s.date),
                ]
                  .filter(Boolean)
                  .join(' · ')}
              </small>
            </span>
            {sources.length > 1 && (
              <Button
                className="quiet-button"
                aria-label={t.remove(s.name)}
                onPress={() => keep(sources.filter((other) => other.id !== s.id))}
              >
                {common.remove}
              </Button>
            )}
          </li>
        ))}
      </ul>
      <Failed error={error} />
      {sources.length > 1 && <Agreement own={own} sources={sources} />}
      {adding ? (
        <AddSource
          own={own}
          onDone={(source) => {
            setAdding(false);
            if (source) keep([...sources, source]);
          }}
        />
      ) : (
        sources.length > 0 && (
          <Button className="button" onPress={() => setAdding(true)}>
            {t.add}
          </Button>
        )
      )}
    </section>
  );
}

function countOf(source: FoodSource): number {
  return new Set(
    [source.composition, source.low, source.high].flatMap((amounts) => Object.keys(amounts ?? {})),
  ).size;
}

/** The disagreement as a picture, one nutrient at a time, and whose figure counts. */
function Agreement({ own, sources }: { own: OwnFood; sources: readonly FoodSource[] }) {
  const { save } = useSaveFood();
  const t = words().foods.sources;
  const doubts = disagreements('all', sources, own.group);
  const told = NUTRIENTS.filter(
    ({ tag }) =>
      sources.filter((s) => [s.composition, s.low, s.high].some((a) => a?.[tag] !== undefined)).length > 1,
  ).map((n) => n.tag);
  const [chosen, setChosen] = useState<Tag>();
  const tag = chosen && told.includes(chosen) ? chosen : (doubts[0]?.tag ?? told[0]);
  if (!tag) return <p className="hint">{t.apart}</p>;
  const choice = own.evidence?.choices?.[tag] ?? 'mean';
  const combined = combine(tag, sources, choice, own.group);
  const picture = pictureOf(tag, sources, combined, own.group);
  const knows = sources.filter((s) => s.composition[tag] !== undefined);

  function choose(id: string) {
    const { [tag!]: _was, ...rest } = own.evidence?.choices ?? {};
    const choices = id === 'mean' ? rest : { ...rest, [tag!]: id };
    void save(withEvidence(own, { ...own.evidence, choices }), own).catch(() => {});
  }

  return (
    <>
      {doubts.length > 0 && (
        <ul className="doubts" aria-label={t.doubts}>
          {doubts.map((d) => (
            <li key={`${d.tag} ${d.between.join()} ${d.kind}`}>
              <span>{d.sentence}</span>
              <Button
                className="quiet-button"
                aria-label={t.showOf(nutrientWord(d.tag))}
                onPress={() => setChosen(d.tag)}
              >
                {t.show}
              </Button>
            </li>
          ))}
        </ul>
      )}
      <div className="fields">
        <Choice
          label={t.agreeOn}
          value={tag}
          options={told.map((t) => [t, nutrient(t).name] as const)}
          onChange={setChosen}
        />
        {knows.length > 1 && (
          <Choice
            label={t.counts}
            value={choice}
            options={[['mean', t.mean] as const, ...knows.map((s) => [s.id, t.alone(s.name)] as const)]}
            onChange={choose}
          />
        )}
      </div>
      {picture && <DisagreementPicture picture={picture} />}
      {combined && <p className="hint">{t.lines(combined.source)}</p>}
    </>
  );
}
