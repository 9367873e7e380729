/** The whole ration of a day in grams, with what the animals of the mix eat as a suggestion. */
import { Button } from 'react-aria-components';
import type { Animal, Mix } from '../../../household/model.ts';
import { dailyOf, leastDaily, type WaterOf, withDaily } from '../../../household/reckon/mix/beside.ts';
import { words } from '../../../words/words.ts';
import { NumberInput } from '../../shared/NumberInput.tsx';
import type { FormulationView } from '../useFormulation.ts';

interface Props {
  mix: Mix;
  view: FormulationView;
  animals: readonly Animal[];
  waterOf: WaterOf;
  say(notice: string): void;
}

export function RationDay({ mix, view, animals, waterOf, say }: Props) {
  const t = words().beside.day;
  const { daily_grams } = mix.problem;
  const said = dailyOf(animals, mix.animalIds);
  const least = Math.ceil(100 * leastDaily(mix.problem, waterOf)) / 100;
  const set = (daily: number | undefined) => {
    say(daily === undefined && least > 0 ? t.without : '');
    void view.edit((m) => withDaily(m, daily, waterOf));
  };
  const offers = said
    ? said.names.length === 1
      ? [{ grams: said.sum, offer: t.use }]
      : [
          { grams: said.sum, offer: t.useAll },
          { grams: said.mean, offer: t.useEach },
        ]
    : [];
  const open = offers.filter((o) => o.grams >= least && o.grams !== daily_grams);

  return (
    <div className="ration-day">
      <NumberInput
        label={t.label}
        measure="mass"
        min={Math.max(0.01, least)}
        max={100_000}
        step={1}
        value={daily_grams}
        placeholder={t.notSaid}
        hint={least > 0 ? t.needs(least) : undefined}
        onCommit={set}
      />
      {said && open.length > 0 && (
        <div className="ration-offer">
          <span className="hint">{t.fed(said.names, said.sum)}</span>
          {open.map(({ grams, offer }) => (
            <Button key={offer(grams)} className="button small" onPress={() => set(Number(grams.toFixed(2)))}>
              {offer(grams)}
            </Button>
          ))}
        </div>
      )}
    </div>
  );
}
