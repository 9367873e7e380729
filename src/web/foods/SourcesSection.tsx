/** Where an own food's figures come from: every source, how they agree, and which of them counts. */
import { useState } from 'react';
import { Button } from 'react-aria-components';
import { withEvidence } from '../../foods/evidence.ts';
import { combine } from '../../foods/sources/combine.ts';
import { disagreements } from '../../foods/sources/disagree.ts';
import { pictureOf } from '../../foods/sources/picture.ts';
import type { FoodSource } from '../../foods/sources/source.ts';
import type { OwnFood } from '../../household/model.ts';
import { NUTRIENTS, nutrient, type Tag } from '../../nutrition/nutrients.ts';
import { Choice } from '../shared/Choice.tsx';
import { Failed } from '../shared/Failed.tsx';
import { useSaveFood } from '../store/save-food.ts';
import { AddSource } from './AddSource.tsx';
import { DisagreementPicture } from './DisagreementPicture.tsx';

export function SourcesSection({ own }: { own: OwnFood }) {
  const { save, error } = useSaveFood();
  const [adding, setAdding] = useState(false);
  const sources = own.evidence?.sources ?? [];
  const keep = (next: readonly FoodSource[]) =>
    void save(withEvidence(own, { ...own.evidence, sources: next }), own).catch(() => {});

  return (
    <section className="sources" aria-label="Sources">
      <h3>Where the figures come from</h3>
      {sources.length === 0 && <p>{own.source || 'Typed in, without a source.'}</p>}
      <ul>
        {sources.map((s) => (
          <li key={s.id}>
            <span>
              {s.name}
              <small>
                {[
                  `${countOf(s)} amounts`,
                  s.basis === 'dry matter' && 'printed for dry matter',
                  s.n && `${s.n} samples`,
                  s.date,
                ]
                  .filter(Boolean)
                  .join(' · ')}
              </small>
            </span>
            {sources.length > 1 && (
              <Button
                className="quiet-button"
                aria-label={`Remove the source ${s.name}`}
                onPress={() => keep(sources.filter((other) => other.id !== s.id))}
              >
                Remove
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
            Add a source
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
  const doubts = disagreements('all', sources, own.group);
  const told = NUTRIENTS.filter(
    ({ tag }) =>
      sources.filter((s) => [s.composition, s.low, s.high].some((a) => a?.[tag] !== undefined)).length > 1,
  ).map((n) => n.tag);
  const [chosen, setChosen] = useState<Tag>();
  const tag = chosen && told.includes(chosen) ? chosen : (doubts[0]?.tag ?? told[0]);
  if (!tag) return <p className="hint">No two of these sources speak of the same amount.</p>;
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
        <ul className="doubts" aria-label="Sources that cannot both be right">
          {doubts.map((d) => (
            <li key={`${d.tag} ${d.between.join()} ${d.kind}`}>
              <span>{d.sentence}</span>
              <Button
                className="quiet-button"
                aria-label={`Show ${nutrient(d.tag).name.toLowerCase()}`}
                onPress={() => setChosen(d.tag)}
              >
                Show
              </Button>
            </li>
          ))}
        </ul>
      )}
      <div className="fields">
        <Choice
          label="How the sources agree on"
          value={tag}
          options={told.map((t) => [t, nutrient(t).name] as const)}
          onChange={setChosen}
        />
        {knows.length > 1 && (
          <Choice
            label="What counts"
            value={choice}
            options={[
              ['mean', 'mean of all sources'] as const,
              ...knows.map((s) => [s.id, `${s.name} alone`] as const),
            ]}
            onChange={choose}
          />
        )}
      </div>
      {picture && <DisagreementPicture picture={picture} />}
      {combined && (
        <p className="hint">
          {combined.source}. The lines reach as far as 95 of 100 bags would, were the source right.
        </p>
      )}
    </>
  );
}
