/** What looks odd about a food's figures, by themselves and beside a food of that name. None of it forbids saving. */
import { useMemo } from 'react';
import type { Figures, FoodGroup } from '../../foods/food.ts';
import { checkFigures } from '../../foods/label/checks.ts';
import { likeNamed } from '../../foods/like-named.ts';
import { words } from '../../words/words.ts';
import { useSettled } from '../shared/hooks/settled.ts';
import { useFoodSearch } from '../worker/engine.ts';

/** Warnings left out while a fault is shown: the fault says the same in other words. */
const SAID_BY_FAULT = ['sum', 'bounds', 'fibre'];
/** More moisture than any dry food has, percent. */
const FRESH = 50;

interface Props {
  figures: Figures;
  name: string;
  group: FoodGroup | undefined;
  kind: 'mix' | 'pellet';
  /** Whether a fault of the figures is shown. */
  faulty: boolean;
}

export function FigureWarnings({ figures, name, group, kind, faulty }: Props) {
  const [settled] = useSettled(name, 300);
  const { data: found = [] } = useFoodSearch(settled, 8);
  // A pellet is a recipe of its own: no food of the tables is like it.
  const like = kind === 'pellet' ? undefined : likeNamed(settled, group, found);
  const warnings = useMemo(() => {
    // Dried beside fresh, several times more is no slip; without the moisture the two cannot be set equal.
    const apart = figures.composition.WATER === undefined && (like?.composition.WATER ?? 0) > FRESH;
    return checkFigures(figures, { name: settled, group, like }).filter(
      ({ check }) => !(faulty && SAID_BY_FAULT.includes(check)) && !(apart && check === 'slip'),
    );
  }, [figures, settled, group, like, faulty]);
  return (
    <div role="status" className="figure-warnings">
      {warnings.length > 0 && (
        <>
          <h4>{words().foods.figures.lookAgain}</h4>
          <ul>
            {warnings.map((w) => (
              <li key={w.message}>{w.message}</li>
            ))}
          </ul>
          <p className="hint">{words().foods.figures.allTheSame}</p>
        </>
      )}
    </div>
  );
}
