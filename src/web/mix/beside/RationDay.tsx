/** The whole ration of a day in grams, with what the animals of the mix eat as a suggestion. */
import { Button } from 'react-aria-components';
import { joined } from '../../../formulation/explain/sentences.ts';
import type { Animal, Mix } from '../../../household/model.ts';
import { dailyOf, leastDaily, type WaterOf, withDaily } from '../../../household/reckon/mix/beside.ts';
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
  const { daily_grams } = mix.problem;
  const said = dailyOf(animals, mix.animalIds);
  const least = Math.ceil(100 * leastDaily(mix.problem, waterOf)) / 100;
  const set = (daily: number | undefined) => {
    say(
      daily === undefined && least > 0
        ? 'Without the whole ration of a day, what was given in grams is kept as its share of the ration.'
        : '',
    );
    void view.edit((m) => withDaily(m, daily, waterOf));
  };
  const offers = said
    ? said.names.length === 1
      ? [{ grams: said.sum, words: '' }]
      : [
          { grams: said.sum, words: ' for all together' },
          { grams: said.mean, words: ' for each, on average' },
        ]
    : [];
  const open = offers.filter((o) => o.grams >= least && o.grams !== daily_grams);

  return (
    <div className="ration-day">
      <NumberInput
        label="Whole ration of a day"
        unit="g"
        min={Math.max(0.01, least)}
        max={100_000}
        step={1}
        value={daily_grams}
        placeholder="not said"
        hint={least > 0 ? `What is given in grams below needs ${least} g at least.` : undefined}
        onCommit={set}
      />
      {said && open.length > 0 && (
        <div className="ration-offer">
          <span className="hint">
            {joined(said.names)} {said.names.length === 1 ? 'is' : 'are'} fed {round(said.sum)} g a day.
          </span>
          {open.map(({ grams, words }) => (
            <Button key={words} className="button small" onPress={() => set(Number(grams.toFixed(2)))}>
              Use {round(grams)} g{words}
            </Button>
          ))}
        </div>
      )}
    </div>
  );
}

function round(value: number): string {
  return String(Number(value.toFixed(1)));
}
