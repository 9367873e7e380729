/** The foods that are out of a mix because an animal refuses them, each with why and the trial that says so. */
import type { Mix } from '../../../household/model.ts';
import type { OutRule } from '../../../household/reckon/care/out-foods.ts';
import type { OutOfMix } from '../../../household/reckon/mix/eaters.ts';
import { words } from '../../../words/words.ts';
import { linkTo } from '../../shared/route.ts';
import { Sentence } from '../../shared/words/Sentence.tsx';

interface Props {
  /** With what its animals bring. */
  mix: Mix;
  out: OutOfMix;
  nameOf(id: string): string;
}

export function RefusedFoods({ mix, out, nameOf }: Props) {
  const { animals: t } = words().mix;
  const { foods, beside } = mix.problem;
  return (
    <ul className="refused-foods" aria-live="polite" aria-label={t.refused}>
      {[...foods, ...beside].map(({ id }) => (
        <Refusals
          key={id}
          name={nameOf(id)}
          rules={out[id] ?? []}
          isBeside={beside.some((b) => b.id === id)}
        />
      ))}
    </ul>
  );
}

function Refusals(props: { name: string; rules: readonly OutRule[]; isBeside: boolean }) {
  const { mix, trials: t } = words();
  const { name, rules, isBeside } = props;
  const refused = rules.filter((r) => r.why !== 'upset');
  // What upset an animal is told above the foods: that is the graver reason.
  if (refused.length === 0 || refused.length < rules.length) return null;
  const listed = [...new Set(refused.flatMap((r) => (r.why === 'list' ? [r.animal.name] : [])))];
  const tried = refused.filter((r) => r.why === 'refused');
  return (
    <>
      {listed.length > 0 && !isBeside && <li>{mix.animals.isOut(name, listed)}</li>}
      {isBeside && <li>{t.mix.refusedBeside(name, (listed[0] ?? tried[0]?.animal.name) || '')}</li>}
      {!isBeside &&
        tried.map((r) => (
          <li key={r.animal.id}>
            <Sentence
              of={t.mix.isOut(name, r.animal.name)}
              with={{ trial: (text) => <a href={linkTo('animals', r.animal.id, 'trials')}>{text}</a> }}
            />
          </li>
        ))}
    </>
  );
}
