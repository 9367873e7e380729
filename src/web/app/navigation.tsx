/** Where one can go: the places of the bar, and the row of places in the kitchen. */
import { linkTo } from '../shared/route.ts';
import './navigation.css';

/** What stands in the bar, with its words; shorter ones where the bar is narrow. */
export const PLACES: readonly (readonly [place: string, words: string, short?: string])[] = [
  ['today', 'Today'],
  ['foods', 'Foods'],
  ['targets', 'Targets'],
  ['mix', 'Mix'],
  ['calendar', 'Kitchen'],
  ['animals', 'Animals'],
  ['household', 'Household', 'House'],
];

/** The way from mix to bowl, in the order in which it goes. */
const KITCHEN_PLACES = [
  ['calendar', 'Calendar'],
  ['shopping', 'Shopping'],
  ['cupboard', 'Cupboard'],
  ['drying', 'Drying'],
  ['weigh', 'Weigh out'],
] as const;

/** Whether a place stands in the kitchen's row; in the bar it is then "Kitchen". */
export function isInKitchen(place: string): boolean {
  return KITCHEN_PLACES.some(([p]) => p === place);
}

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
