/** The way from mix to bowl, in the order in which it goes. */
import { linkTo } from '../shared/route.ts';

export const KITCHEN_PLACES = [
  ['calendar', 'Calendar'],
  ['shopping', 'Shopping'],
  ['cupboard', 'Cupboard'],
  ['drying', 'Drying'],
  ['weigh', 'Weigh out'],
] as const;

export function KitchenNav({ here }: { here: string }) {
  return (
    <nav className="kitchen-nav" aria-label="Kitchen">
      {KITCHEN_PLACES.map(([place, words]) => (
        <a key={place} href={linkTo(place)} aria-current={place === here ? 'page' : undefined}>
          {words}
        </a>
      ))}
    </nav>
  );
}
