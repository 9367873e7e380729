/** Why what lies ready should not be fed. */
import type { MealStop } from '../../../household/reckon/care/daily-meal.ts';
import { linkTo } from '../../shared/route.ts';
import { stopWords } from './stop-words.ts';

export function StopLine({ stop, name }: { stop: MealStop; name: string }) {
  const words = stopWords(stop, name);
  return (
    <p className="notice-line stop-line" role="alert">
      <span aria-hidden="true">! </span>
      {stop.lot ? <a href={linkTo('cupboard', stop.lot.id)}>{words}</a> : words}
    </p>
  );
}
