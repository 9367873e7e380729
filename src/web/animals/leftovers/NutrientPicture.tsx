/** What leaving some foods means for the food as a whole: each nutrient as offered, and as taken or eaten, as ranges. */
import { useState } from 'react';
import { Button } from 'react-aria-components';
import type { Intake } from '../../../household/reckon/care/intake.ts';
import type { NutrientIntake, NutrientOf } from '../../../household/reckon/care/intake-nutrients.ts';
import { nutrient, type Tag, unitWord } from '../../../nutrition/nutrients.ts';
import { words } from '../../../words/words.ts';
import { NutrientName } from '../../shared/words/NutrientName.tsx';

/** What ranges of needs are about, and the minerals that seed eaters run short of. */
const FIRST: readonly Tag[] = ['PROCNT', 'FAT', 'FIBC', 'FIBTG', 'CA', 'P'];
/** Percent by weight from which on an amount counts as known of all. */
const WHOLE = 99.5;

export function NutrientPicture({ intake }: { intake: Intake }) {
  const { leftovers } = words();
  const t = leftovers.nutrients;
  const [all, setAll] = useState(false);
  const eaten = intake.hoard === 'counted';
  const known = intake.nutrients.filter((n) => n.offered.content && (eaten ? n.eaten : n.taken).content);
  const first = known.filter((n) => FIRST.includes(n.tag));
  const shown = all ? [...first, ...known.filter((n) => !FIRST.includes(n.tag))] : first;
  return (
    <section aria-label={t.title}>
      <h4>{t.title}</h4>
      {known.length === 0 ? (
        <p className="empty">{t.none}</p>
      ) : (
        <p className="hint">{eaten ? t.hintEaten : t.hintTaken}</p>
      )}
      <dl className="left-nutrients">
        {shown.map((n) => (
          <Row key={n.tag} n={n} eaten={eaten} />
        ))}
      </dl>
      {known.length > first.length && (
        <Button className="quiet-button" onPress={() => setAll(!all)}>
          {all ? t.fewer : t.more}
        </Button>
      )}
    </section>
  );
}

function Row({ n, eaten }: { n: NutrientIntake; eaten: boolean }) {
  const t = words().leftovers.nutrients;
  const gone = eaten ? n.eaten : n.taken;
  const most = Math.max(n.offered.content?.high ?? 0, gone.content?.high ?? 0);
  return (
    <div>
      <dt>
        <NutrientName tag={n.tag} />
      </dt>
      <Line className="offered" of={n.offered} tag={n.tag} most={most} label={t.offered} />
      <Line className="gone" of={gone} tag={n.tag} most={most} label={eaten ? t.eaten : t.taken} />
    </div>
  );
}

function Line(props: { className: string; of: NutrientOf; tag: Tag; most: number; label: string }) {
  const t = words().leftovers.nutrients;
  const { of, most } = props;
  if (!of.content) return null;
  const { low, high } = of.content;
  const at = (value: number) => (most > 0 ? (100 * value) / most : 0);
  return (
    <dd className={`left-line ${props.className}`}>
      <span className="left-line-name">{props.label}</span>
      <span className="left-scale" aria-hidden="true">
        <i style={{ left: `${at(low)}%`, width: `max(4px, ${at(high - low)}%)` }} />
      </span>
      <span className="left-line-value">
        {t.amount(low, high, unitWord(nutrient(props.tag).unit))}
        {of.coverage < WHOLE && <small> {t.coverage(of.coverage)}</small>}
      </span>
    </dd>
  );
}
