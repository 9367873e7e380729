/** How much there is of a food that was ticked, where it is not what the list asks for. */
import { words } from '../../words/words.ts';
import { NumberInput } from '../shared/NumberInput.tsx';

/** @param props.usual g that the list asks for */
export function WeightField(props: {
  value: number | undefined;
  usual: number | undefined;
  keep(grams: number | undefined): void;
}) {
  const { value, usual, keep } = props;
  const t = words().shopping.list;
  return (
    <div className="fields">
      <NumberInput
        label={t.weight}
        measure="mass"
        min={0.1}
        max={1_000_000}
        step={10}
        value={value}
        hint={t.weightHint}
        onCommit={keep}
        {...(usual !== undefined && { placeholder: words().figures.number(words().figures.mass(usual)) })}
      />
    </div>
  );
}
