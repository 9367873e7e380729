/** Noting a weight: one press on a likely figure, or any other typed. What is unlikely is asked about before it counts. */
import { type FormEvent, useRef, useState } from 'react';
import { Button, Form } from 'react-aria-components';
import { speciesKind } from '../../../care/animal/species.ts';
import { ADULT_WEIGHTS } from '../../../care/figures/adult-weights.ts';
import type { Weighing } from '../../../care/model.ts';
import type { WeightStory } from '../../../care/weight/model.ts';
import type { Animal } from '../../../household/model.ts';
import type { Day } from '../../../kitchen/model.ts';
import { words } from '../../../words/words.ts';
import { focusWhenThere } from '../../shared/focus.ts';
import { NumberInput } from '../../shared/NumberInput.tsx';
import { newId } from '../../store/new-id.ts';
import { SaidLine } from '../timeline/SaidLine.tsx';
import { useTold } from '../timeline/useTold.ts';
import { AskUnlikely } from './AskUnlikely.tsx';
import { netOf, padCentre, padFigures, type Unlikely, unlikelyWeight } from './pad-figures.ts';
import { TubSwitch } from './TubSwitch.tsx';
import { lastWords } from './weight-words.ts';

/** The same figure pressed again so soon is a finger that bounced, ms. */
const BOUNCE = 1500;
/** What was kept so short a time before is named, ms: it may have been a slip. */
const JUST = 600_000;

export function Pad(props: { animal: Animal; story: WeightStory; weighings: readonly Weighing[]; day: Day }) {
  const { animal, story, weighings, day } = props;
  const { bodyWeight: t, figures: f } = words();
  const { said, error, add } = useTold('weighings');
  const [asked, ask] = useState<{ onScale: number; why: Unlikely }>();
  const [typed, setTyped] = useState<number>();
  const [fault, setFault] = useState('');
  const pressed = useRef({ grams: 0, at: 0 });
  /** Held from the first on: figures that moved under the finger would be pressed wrong. */
  const [held, hold] = useState(() => padCentre(story, animal.usualGrams));
  const centre = held ?? padCentre(story, animal.usualGrams);
  if (held === undefined && centre !== undefined) hold(centre);
  const tub = animal.tub ?? 0;

  /** @returns whether it was kept or is asked about */
  function weigh(onScale: number, sure = false): boolean {
    const grams = netOf(onScale, tub);
    const now = Date.now();
    if (grams <= 0) {
      setFault(t.pad.belowTub(tub));
      return false;
    }
    setFault('');
    if (pressed.current.grams === grams && now - pressed.current.at < BOUNCE) return true;
    const range = ADULT_WEIGHTS[speciesKind(animal.species)];
    const why = sure ? undefined : unlikelyWeight(grams, { story, range, lifeStage: animal.lifeStage });
    if (why) {
      ask({ onScale, why });
      focusWhenThere('.ask-weight .keep');
      return true;
    }
    pressed.current = { grams, at: now };
    ask(undefined);
    const justBefore = weighings.find((w) => Math.abs(now - Date.parse(w.at)) < JUST);
    add(
      {
        id: newId(),
        animalId: animal.id,
        at: new Date(now).toISOString(),
        grams,
        ...(tub > 0 && { tub }),
        ...(sure && { sure }),
      },
      justBefore
        ? t.keptAfterOther(grams, justBefore.grams)
        : tub > 0
          ? t.keptTub(grams, onScale)
          : t.kept(grams),
    );
    return true;
  }
  function submit(event: FormEvent<HTMLFormElement>) {
    event.preventDefault();
    const field = event.currentTarget.querySelector<HTMLElement>('input');
    if (typed === undefined || field?.ariaInvalid === 'true') return field?.focus();
    if (weigh(typed)) setTyped(undefined);
  }

  return (
    <section className="weigh-pad" aria-label={t.weigh(animal.name)}>
      <h3>{t.weigh(animal.name)}</h3>
      <p>{lastWords(animal.name, story, day)}</p>
      {centre === undefined ? (
        <p className="hint">{t.pad.first}</p>
      ) : (
        <>
          <p className="hint">{tub > 0 ? t.pad.pressTub(tub) : t.pad.press}</p>
          <fieldset className="pad">
            <legend className="sr-only">{t.pad.title}</legend>
            {padFigures(centre, tub, f.massUnit).map(({ onScale, net, likely }) => (
              <Button
                key={onScale}
                className={likely ? 'pad-key likely' : 'pad-key'}
                onPress={() => weigh(onScale)}
              >
                {t.pad.button(onScale)}
                {tub > 0 && <small> {t.pad.net(net)}</small>}
                {likely && <span className="sr-only"> ({t.pad.likeliest})</span>}
              </Button>
            ))}
          </fieldset>
        </>
      )}
      <Form className="pad-other" onSubmit={submit}>
        <NumberInput
          label={tub > 0 ? t.pad.otherTub : t.pad.other}
          measure="mass"
          min={0.1}
          max={20_000}
          step={1}
          decimals={2}
          value={typed}
          onCommit={(grams) => {
            setTyped(grams);
            setFault('');
          }}
          error={fault}
        />
        <Button type="submit" className="button">
          {t.pad.keep}
        </Button>
      </Form>
      {asked ? (
        <AskUnlikely
          grams={netOf(asked.onScale, tub)}
          why={asked.why}
          on={day}
          onCorrect={() => {
            setTyped(asked.onScale);
            ask(undefined);
            focusWhenThere('.pad-other input');
          }}
          onRight={() => {
            weigh(asked.onScale, true);
            focusWhenThere('.weigh-pad .said-line p');
          }}
        />
      ) : (
        <SaidLine said={said} error={error} />
      )}
      <TubSwitch animal={animal} weighings={weighings} />
    </section>
  );
}
