/** Foods on which an animal did not do well: out of the mix, or in it by the keeper's choice for the other animals. */
import type { ReactNode } from 'react';
import { Button } from 'react-aria-components';
import type { Mix } from '../../../household/model.ts';
import { hereAmong } from '../../../household/reckon/care/here.ts';
import { type OutRule, outRules, rulesOn } from '../../../household/reckon/care/out-foods.ts';
import type { OutOfMix } from '../../../household/reckon/mix/eaters.ts';
import { words } from '../../../words/words.ts';
import { Failed } from '../../shared/Failed.tsx';
import { GoAhead } from '../../shared/go-ahead/GoAhead.tsx';
import { linkTo } from '../../shared/route.ts';
import { today } from '../../shared/today.ts';
import { Sentence } from '../../shared/words/Sentence.tsx';
import { useSave } from '../../store/household.ts';
import { useMixDraft } from '../../store/mix-draft.tsx';
import '../foods/HurtLines.css';

interface Props {
  /** With what its animals bring. */
  mix: Mix;
  out: OutOfMix;
  nameOf(id: string): string;
}

export function UpsetFoods({ mix, out, nameOf }: Props) {
  const { trials: texts, figures: f, hurts } = words();
  const t = texts.mix;
  const { house } = useMixDraft();
  const save = useSave('trials');
  const fed = hereAmong(house.animals, mix.animalIds);
  const { foods, beside } = mix.problem;
  const upset = outRules(house).filter((r) => r.why === 'upset');
  const lines = [...foods, ...beside].flatMap((food) =>
    rulesOn(upset, food).map((rule) => ({ food, rule, isOut: out[food.id]?.some((r) => same(r, rule)) })),
  );
  if (lines.length === 0) return null;

  /** Keeps, or takes back, that the others get it all the same. */
  function others(rule: OutRule, note: string | undefined) {
    const trial = house.trials.find((x) => x.id === rule.trial);
    if (!trial) return;
    const { others: _, ...rest } = trial;
    save.mutate(note === undefined ? rest : { ...rest, others: { note, on: today() } }, trial);
  }

  return (
    <section className="hurts upset-foods" aria-label={t.all}>
      <ul>
        {lines.map(({ food, rule, isOut }) => {
          const name = nameOf(food.id);
          const { animal } = rule;
          const trial = (text: string) => <a href={linkTo('animals', animal.id, 'trials')}>{text}</a>;
          const key = `${food.id} ${animal.id} ${rule.trial}`;
          if (!isOut && rule.others)
            return (
              <Line key={key} kind="upset-gone">
                <Sentence
                  of={t.lifted(name, animal.name, f.day(rule.others.on), rule.others.note)}
                  with={{ trial }}
                />
                <Button className="quiet-button small" onPress={() => others(rule, undefined)}>
                  {hurts.keepOut}
                </Button>
              </Line>
            );
          const own = fed.some((a) => a.id === animal.id);
          const isBeside = beside.some((b) => b.id === food.id);
          return (
            <Line key={key} kind="upset">
              <Sentence
                of={(isBeside ? t.upsetBeside : own ? t.upsetOwn : t.upset)(name, animal.name)}
                with={{ trial }}
              />
              {!own && (
                <GoAhead
                  label={texts.upset.goAhead}
                  spoken={t.goAheadWith(name)}
                  why={texts.upset.why}
                  yes={texts.upset.yes}
                  no={texts.upset.no}
                  act={(note) => others(rule, note)}
                />
              )}
            </Line>
          );
        })}
      </ul>
      <Failed error={save.error} />
    </section>
  );
}

function same(a: OutRule, b: OutRule): boolean {
  return a.trial === b.trial && a.animal.id === b.animal.id && a.why === b.why;
}

function Line({ kind, children: [words, press] }: { kind: string; children: [ReactNode, ReactNode] }) {
  return (
    <li data-hurt={kind}>
      <span className="hurt-sign" aria-hidden="true">
        ▲
      </span>
      <span className="hurt-words">{words}</span>
      {press}
    </li>
  );
}
