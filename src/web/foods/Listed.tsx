/** What must never be fed and stands on a food's own list: it keeps the food out of every mix. */

import { neverFedIn } from '../../foods/ingredients/never-fed.ts';
import { printedTexts } from '../../foods/printed-texts.ts';
import type { OwnFood } from '../../household/model.ts';
import { words } from '../../words/words.ts';

export function Listed({ own, species }: { own: OwnFood; species: string | undefined }) {
  const never = neverFedIn(printedTexts(own.evidence), species);
  if (never.length === 0) return null;
  const t = words().foods.listed;
  const parts = never.map(({ caution, found }) => t.part(found, caution.title));
  return (
    <div className="caution-card never" role="note">
      <p>
        <strong>{t.title}</strong>
      </p>
      <p>{t.says(own.name, parts)}</p>
    </div>
  );
}
