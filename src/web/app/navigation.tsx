/** Where one can go: the places of the bar, and the row of places in the kitchen. */
import { words } from '../../words/words.ts';
import { linkTo } from '../shared/route.ts';
import './navigation.css';

/** What stands in the bar. */
export const PLACES = ['today', 'foods', 'targets', 'mix', 'calendar', 'animals', 'household'] as const;

/** The way from mix to bowl, in the order in which it goes. */
const KITCHEN_PLACES = ['calendar', 'shopping', 'cupboard', 'drying', 'weigh'] as const;

/** Whether a place stands in the kitchen's row; in the bar it is then "Kitchen". */
export function isInKitchen(place: string): boolean {
  return KITCHEN_PLACES.some((p) => p === place);
}

export function KitchenNav({ here }: { here: string }) {
  return (
    <nav className="kitchen-nav" aria-label={words().frame.kitchenNav}>
      {KITCHEN_PLACES.map((place) => (
        <a key={place} href={linkTo(place)} aria-current={place === here ? 'page' : undefined}>
          {words().frame.kitchen[place]}
        </a>
      ))}
    </nav>
  );
}
