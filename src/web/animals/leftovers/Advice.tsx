/** What helps: a vet where it eats much less than usual, and gentle changes else. */
import type { ReactNode } from 'react';
import type { Advice as Piece } from '../../../care/leftovers/advice.ts';
import type { Animal } from '../../../household/model.ts';
import { isHere } from '../../../household/reckon/care/here.ts';
import type { Intake } from '../../../household/reckon/care/intake.ts';
import { words } from '../../../words/words.ts';
import { linkTo } from '../../shared/route.ts';

export function Advice({ animal, intake }: { animal: Animal; intake: Intake }) {
  const t = words().leftovers.advice;
  if (!isHere(animal) || intake.advice.length === 0) return null;
  return (
    <section className="left-advice" aria-label={t.title}>
      <h4>{t.title}</h4>
      <ul>
        {intake.advice.map((piece) => (
          <li key={piece.kind} className={piece.kind === 'vet' ? 'left-vet' : undefined}>
            {saidOf(piece, intake.names)}
          </li>
        ))}
      </ul>
    </section>
  );
}

function saidOf(piece: Piece, names: Intake['names']): ReactNode {
  const t = words().leftovers.advice;
  const named = (foods: readonly string[]) => foods.map((id) => names[id] ?? id);
  switch (piece.kind) {
    case 'vet':
      return (
        <>
          <b>{vetWords(piece)}</b> {t.vetHoard} <small>{t.vetRule}</small>
        </>
      );
    case 'less':
      return t.less(named(piece.foods));
    case 'change':
      return (
        <>
          {t.change(named(piece.foods))} <a href={linkTo('mix')}>{t.mix}</a>
        </>
      );
    case 'scatter':
      return t.scatter;
    case 'never-starve':
      return t.starve;
    case 'hoard':
      return t.bowl;
  }
}

function vetWords({ soon, taken, usual }: Extract<Piece, { kind: 'vet' }>): string {
  const t = words().leftovers.advice;
  if (usual === undefined) return t.vetTodayNothing;
  return soon === 'today' ? t.vetToday(taken, usual) : t.vetTomorrow(taken, usual);
}
