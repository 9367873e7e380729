/**
 * Whole packs from several sellers: every need met at least cost, or with least left over. A mixed-integer program:
 * packs of each offer are whole, a seller is used or not (its delivery is paid once, its minimum order is reached).
 *
 * Ties are broken the same way every time: the other aim, then fewest packs, then offers first by id. The order in
 * which needs and offers are given changes nothing. Foods that share no seller with a delivery charge or a minimum
 * order do not touch one another, and are chosen apart.
 */
import type { Highs } from '../../formulation/solve/highs.ts';
import { solveLinearWith } from '../../formulation/solve/linear-program.ts';
import { dot, elementAt } from '../../formulation/solve/vectors.ts';
import { words } from '../../words/words.ts';
import type { Offer } from '../model.ts';
import { apart, NEAR, type Program, programOf } from './pack-program.ts';
import {
  byText,
  checkedSellers,
  checkNeeds,
  checkOffers,
  type PackNeed,
  type Seller,
  sortedOffers,
  type UsableOffer,
  whyNot,
} from './usable-offers.ts';

/** "cost": least money, then least left over. "waste": least left over, then least money. */
export type PackAim = 'cost' | 'waste';

interface PackOptions {
  readonly aim: PackAim;
  readonly sellers?: readonly Seller[];
  /**
   * Grams as mixed that one pack gives, or in words why nobody can say. Its own weight unless given; for food sold
   * fresh that is never right, so a fresh offer is then refused.
   */
  readonly gives?: (offer: Offer) => number | string;
  /** Names of foods in sentences; their ids unless given. */
  readonly nameOf?: (food: string) => string;
}

export interface PacksOf {
  readonly offer: Offer;
  /** 1 or more. */
  readonly packs: number;
  /** g in all, as sold. */
  readonly grams: number;
  /** g in all, as mixed. */
  readonly gives: number;
  readonly price: number;
}

/** What goes to one seller. */
export interface Order {
  readonly seller: string;
  /** Price of the packs. */
  readonly goods: number;
  readonly delivery: number;
}

/** One food that is bought, g as mixed. */
interface FoodBought {
  readonly food: string;
  readonly needed: number;
  readonly bought: number;
  /** bought - needed, never below 0. */
  readonly leftOver: number;
}

export interface NotBought extends PackNeed {
  /** A plain sentence. */
  readonly why: string;
}

export interface PacksChosen {
  /** In the order of the needs, then by id of the offer. */
  readonly packs: readonly PacksOf[];
  /** By name of the seller. */
  readonly orders: readonly Order[];
  /** Packs and delivery. */
  readonly cost: number;
  /** In the order of the needs; without those of 0 g and those that cannot be bought. */
  readonly foods: readonly FoodBought[];
  readonly missing: readonly NotBought[];
  /** Offers of needed foods that could not be counted, and why. */
  readonly refused: readonly { readonly offer: Offer; readonly why: string }[];
  /** False where the search ended before a choice was shown to be the best; it still meets every need. */
  readonly proven: boolean;
}

/**
 * Simplex iterations for each of the few programs that are solved. 25 to 40 foods with 4 to 6 offers each from three
 * sellers with delivery and a least order take 4,200 at most, as measured; a second is some 8,000.
 */
const MOST_ITERATIONS = 40_000;

/**
 * Chooses packs. Blocks while it solves: 25 foods with four offers each from three sellers with
 * delivery take about a third of a second.
 * @throws RangeError on a need, an offer or a seller out of range, or one that is named twice
 */
export function choosePacks(
  needs: readonly PackNeed[],
  offers: readonly Offer[],
  options: PackOptions,
  highs: Highs,
): PacksChosen {
  const sellers = checkedSellers(options.sellers ?? []);
  checkNeeds(needs);
  checkOffers(offers);
  const nameOf = options.nameOf ?? ((food: string) => food);
  const wanted = needs.filter((need) => need.grams > 0);
  const { usable, refused } = sortedOffers(wanted, offers, sellers, options.gives ?? ownWeight);

  const missing: NotBought[] = [];
  const open: PackNeed[] = [];
  for (const need of wanted)
    if (usable.some((u) => u.offer.food === need.food)) open.push(need);
    else missing.push({ ...need, why: whyNot(need, nameOf(need.food), offers, refused) });

  const packsOf = new Map<string, number>();
  let proven = true;
  for (const part of apart(open, usable, sellers)) {
    const choice = solveGroup(programOf(part.needs, part.usable, sellers), options.aim, highs);
    if (choice === undefined) {
      for (const need of part.needs)
        missing.push({
          ...need,
          why: words().shopping.why.noChoice(nameOf(need.food)),
        });
      proven = false;
      continue;
    }
    proven &&= choice.proven;
    for (const [i, u] of part.usable.entries()) packsOf.set(u.offer.id, elementAt(choice.packs, i));
  }
  missing.sort((a, b) => placeOf(wanted, a.food) - placeOf(wanted, b.food));
  return summed(wanted, usable, packsOf, sellers, { missing, refused, proven });
}

const ownWeight = (offer: Offer): number | string =>
  offer.form === 'fresh' ? words().shopping.why.freshYield : offer.packGrams;

const placeOf = (needs: readonly PackNeed[], food: string) => needs.findIndex((n) => n.food === food);

interface Choice {
  readonly packs: number[];
  readonly proven: boolean;
}

/** First the aim, then the other, then fewest packs and offers first by id: each without giving up the one before. */
function solveGroup(program: Program, aim: PackAim, highs: Highs): Choice | undefined {
  const { offers, money, grams, upper } = program;
  // One offer and nothing else to pay: as many packs as it takes.
  if (offers === 1 && upper.length === 1) {
    const { coefficients } = elementAt(program.rows, 0);
    const packs = [Math.ceil(1 / elementAt(coefficients, 0) - NEAR)];
    if (program.holds(packs)) return { packs, proven: true };
  }
  const ranked = money.map((_, i) => (i < offers ? 1 + (i / Math.max(1, offers)) * 1e-3 : 0));
  const steps = aim === 'cost' ? [money, grams, ranked] : [grams, money, ranked];
  const rows = [...program.rows];
  let best: number[] | undefined;
  let proven = true;
  for (const cost of steps) {
    const scale = Math.max(...cost) || 1;
    const unit = cost.map((c) => c / scale);
    const answer = solveLinearWith(highs, {
      cost: unit,
      rows,
      upper,
      whole: upper.map(() => true),
      mostIterations: MOST_ITERATIONS,
    });
    const packs = answer.x.slice(0, offers).map(Math.round);
    const usable = packs.length === offers && program.holds(packs);
    if (answer.status !== 'optimal') proven = false;
    if (usable && (best === undefined || answer.status === 'optimal')) best = packs;
    if (best === undefined) return undefined;
    if (answer.status !== 'optimal') break;
    rows.push({ coefficients: unit, max: dot(unit, program.completed(best)) + 1e-9 });
  }
  return best && { packs: best, proven };
}

function summed(
  wanted: readonly PackNeed[],
  usable: readonly UsableOffer[],
  packsOf: ReadonlyMap<string, number>,
  sellers: ReadonlyMap<string, Seller>,
  rest: Pick<PacksChosen, 'missing' | 'refused' | 'proven'>,
): PacksChosen {
  const lost = new Set(rest.missing.map((m) => m.food));
  const packs: PacksOf[] = [];
  const foods: FoodBought[] = [];
  for (const { food, grams: needed } of wanted) {
    if (lost.has(food)) continue;
    let bought = 0;
    for (const { offer, gives } of usable) {
      const count = offer.food === food ? (packsOf.get(offer.id) ?? 0) : 0;
      if (count === 0) continue;
      bought += count * gives;
      packs.push({
        offer,
        packs: count,
        grams: count * offer.packGrams,
        gives: count * gives,
        price: count * offer.price,
      });
    }
    foods.push({ food, needed, bought, leftOver: Math.max(0, bought - needed) });
  }
  const names = [...new Set(packs.map((p) => p.offer.seller))].sort(byText);
  const orders = names.map((seller) => ({
    seller,
    goods: packs.reduce((sum, p) => sum + (p.offer.seller === seller ? p.price : 0), 0),
    delivery: sellers.get(seller)?.delivery ?? 0,
  }));
  const cost = orders.reduce((sum, o) => sum + o.goods + o.delivery, 0);
  return { packs, orders, cost, foods, ...rest };
}
