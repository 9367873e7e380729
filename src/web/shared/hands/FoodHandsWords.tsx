/** What hands should know of one food: the keeper's allergy, washing, and large pieces. Nothing where there is nothing. */
import { isIn } from '../../../care/animal/conditions.ts';
import { HANDS_SOURCES } from '../../../care/figures/hands-sources.ts';
import { type Handled, washAfter } from '../../../care/hands/allergens.ts';
import { largePieces } from '../../../care/hands/pieces.ts';
import type { FoodGroup } from '../../../foods/food.ts';
import { sourceWords } from '../../../foods/source-words.ts';
import { isHere } from '../../../household/reckon/care/here.ts';
import { keeperAllergy } from '../../../household/reckon/care/keeper-allergy.ts';
import { words } from '../../../words/words.ts';
import { useMixDraft } from '../../store/mix-draft.tsx';
import './hands.css';

interface Props {
  readonly food: Handled & { readonly group?: FoodGroup };
  /** With why, where it comes from, and the size of pieces; short beside the scale. */
  readonly full?: boolean;
}

export function FoodHandsWords({ food, full = false }: Props) {
  const { house } = useMixDraft();
  const t = words().hands;
  const allergy = keeperAllergy(house, () => food);
  const wash = washAfter(food);
  const bad = house.animals.filter((a) => isHere(a) && isIn(a, 'teeth')).map((a) => a.name);
  const large = full && largePieces(food);
  const named = (all: readonly (keyof typeof t.allergens)[]) => all.map((a) => t.allergens[a]);
  if (!allergy && !wash && !large) return null;
  return (
    <div className="food-hands" role="note" aria-label={t.title}>
      {allergy && allergy.holds.length > 0 && (
        <p className="hands-allergy">
          <strong>{t.allergy.holds(named(allergy.holds))}</strong> {t.allergy.way}
        </p>
      )}
      {allergy && allergy.traces.length > 0 && <p>{t.allergy.traces(named(allergy.traces))}</p>}
      {allergy && allergy.unknown.length > 0 && <p>{t.allergy.unknown(named(allergy.unknown))}</p>}
      {wash && <p>{t.wash[wash]}</p>}
      {large && (
        <p>
          {t.pieces.large} {bad.length > 0 && t.pieces.teeth(bad)}
        </p>
      )}
      {full && (
        <details>
          <summary>{t.why}</summary>
          {allergy?.holds.includes('insects') && (
            <p className="hint">
              {t.allergy.insects} {t.source(HANDS_SOURCES.insects)}
            </p>
          )}
          {wash && (
            <p className="hint">
              {t.wash.why} {t.source(sourceWords(HANDS_SOURCES.wash))}
            </p>
          )}
          {(large || (allergy && !wash)) && (
            <p className="hint">{t.source(sourceWords(HANDS_SOURCES.common))}</p>
          )}
        </details>
      )}
    </div>
  );
}
