/**
 * Whole packs from several sellers: every need met at least cost, or with least left over. A mixed-integer program:
 * packs of each offer are whole, a seller is used or not (its delivery is paid once, its minimum order is reached).
 *
 * Ties are broken the same way every time: the other aim, then fewest packs, then offers first by id. The order in
 * which needs and offers are given changes nothing. Foods that share no seller with a delivery charge or a minimum
 * order do not touch one another, and are chosen apart.
 */
import type { Highs } from '../../formulation/solve/highs.ts';
import { type LinearModel, solveLinearWith } from '../../formulation/solve/linear-program.ts';
import type { Offer } from '../model.ts';

export interface Need {
  readonly food: string;
  /** g still to buy, as mixed; 0 or more. */
  readonly grams: number;
}

/** What a seller asks for beside the price of the packs. A seller that is not listed asks for nothing. */
export interface Seller {
  readonly seller: string;
  /** Paid once where anything is bought there; 0 unless given. */
  readonly delivery?: number;
  /** The packs must cost at least this, delivery not counted; 0 unless given. */
  readonly minimumOrder?: number;
}

/** "cost": least money, then least left over. "waste": least left over, then least money. */
export type PackAim = 'cost' | 'waste';

export interface PackOptions {
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
export interface FoodBought {
  readonly food: string;
  readonly needed: number;
  readonly bought: number;
  /** bought - needed, never below 0. */
  readonly leftOver: number;
}

export interface NotBought extends Need {
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

/** An offer that counts: what a pack gives, g as mixed. */
interface Usable {
  readonly offer: Offer;
  readonly gives: number;
}

/** A need is met within a millionth of itself: what the solver can tell apart, and far below what a scale can. */
const NEAR = 1e-6;
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
  needs: readonly Need[],
  offers: readonly Offer[],
  options: PackOptions,
  highs: Highs,
): PacksChosen {
  const sellers = checkedSellers(options.sellers ?? []);
  checkNeeds(needs);
  checkOffers(offers);
  const nameOf = options.nameOf ?? ((food: string) => food);
  const wanted = needs.filter((need) => need.grams > 0);
  const { usable, refused } = sorted(wanted, offers, sellers, options.gives ?? ownWeight);

  const missing: NotBought[] = [];
  const open: Need[] = [];
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
          why: `No choice of packs was found for ${nameOf(need.food)}; leave out some offers.`,
        });
      proven = false;
      continue;
    }
    proven &&= choice.proven;
    part.usable.forEach((u, i) => {
      packsOf.set(u.offer.id, choice.packs[i]!);
    });
  }
  missing.sort((a, b) => placeOf(wanted, a.food) - placeOf(wanted, b.food));
  return summed(wanted, usable, packsOf, sellers, { missing, refused, proven });
}

const ownWeight = (offer: Offer): number | string =>
  offer.form === 'fresh'
    ? 'it is sold fresh, and how much of it is left after drying is unknown'
    : offer.packGrams;

const placeOf = (needs: readonly Need[], food: string) => needs.findIndex((n) => n.food === food);

function checkNeeds(needs: readonly Need[]): void {
  const seen = new Set<string>();
  for (const { food, grams } of needs) {
    if (!(Number.isFinite(grams) && grams >= 0))
      throw new RangeError(`need of ${food}: grams must be 0 or more, not ${grams}`);
    if (seen.has(food)) throw new RangeError(`${food} is needed twice; add the two up`);
    seen.add(food);
  }
}

function checkOffers(offers: readonly Offer[]): void {
  const seen = new Set<string>();
  for (const { id, packGrams, price } of offers) {
    if (seen.has(id)) throw new RangeError(`two offers have the id ${id}`);
    seen.add(id);
    if (!(Number.isFinite(packGrams) && packGrams > 0))
      throw new RangeError(`offer ${id}: packGrams must be above 0, not ${packGrams}`);
    if (!(Number.isFinite(price) && price >= 0))
      throw new RangeError(
        `offer ${id}: price must be 0 or more, not ${price}; leave out what has no price yet`,
      );
  }
}

function checkedSellers(sellers: readonly Seller[]): ReadonlyMap<string, Seller> {
  const terms = new Map<string, Seller>();
  for (const asked of sellers) {
    const { seller, delivery = 0, minimumOrder = 0 } = asked;
    if (terms.has(seller)) throw new RangeError(`seller ${seller} is listed twice`);
    if (!(Number.isFinite(delivery) && delivery >= 0))
      throw new RangeError(`seller ${seller}: delivery must be 0 or more, not ${delivery}`);
    if (!(Number.isFinite(minimumOrder) && minimumOrder >= 0))
      throw new RangeError(`seller ${seller}: minimumOrder must be 0 or more, not ${minimumOrder}`);
    terms.set(seller, asked);
  }
  return terms;
}

/** Offers of wanted foods that count, by id, and those that do not. */
function sorted(
  wanted: readonly Need[],
  offers: readonly Offer[],
  sellers: ReadonlyMap<string, Seller>,
  gives: (offer: Offer) => number | string,
): { usable: Usable[]; refused: { offer: Offer; why: string }[] } {
  const foods = new Set(wanted.map((n) => n.food));
  const counted: Usable[] = [];
  const refused: { offer: Offer; why: string }[] = [];
  for (const offer of [...offers].sort((a, b) => byText(a.id, b.id))) {
    if (!foods.has(offer.food)) continue;
    const given = gives(offer);
    if (typeof given === 'string') refused.push({ offer, why: given });
    else if (!(Number.isFinite(given) && given > 0))
      throw new RangeError(`offer ${offer.id}: a pack must give more than 0 g, not ${given}`);
    else counted.push({ offer, gives: given });
  }
  const usable = counted.filter(({ offer }) => {
    const least = sellers.get(offer.seller)?.minimumOrder ?? 0;
    const reaches = least === 0 || counted.some((c) => c.offer.seller === offer.seller && c.offer.price > 0);
    if (!reaches)
      refused.push({
        offer,
        why: `${offer.seller} sends nothing below ${least}, and nothing needed from there costs anything`,
      });
    return reaches;
  });
  return { usable, refused };
}

function whyNot(
  need: Need,
  name: string,
  offers: readonly Offer[],
  refused: readonly { offer: Offer; why: string }[],
): string {
  if (!offers.some((o) => o.food === need.food)) return `No seller is known for ${name}; add an offer.`;
  const reasons = new Set(refused.filter((r) => r.offer.food === need.food).map((r) => r.why));
  return `${name} is offered, but cannot be counted: ${[...reasons].join('; ')}.`;
}

/** By code unit, so that every machine sorts alike. */
function byText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

const hasTerms = (s: Seller | undefined) => (s?.delivery ?? 0) > 0 || (s?.minimumOrder ?? 0) > 0;

/** Groups of needs that share no seller with terms of its own. */
function apart(
  needs: readonly Need[],
  usable: readonly Usable[],
  sellers: ReadonlyMap<string, Seller>,
): { needs: Need[]; usable: Usable[] }[] {
  const group = new Map(needs.map((n) => [n.food, n.food]));
  const root = (food: string): string => {
    const up = group.get(food)!;
    return up === food ? food : root(up);
  };
  const firstAt = new Map<string, string>();
  for (const { offer } of usable) {
    if (!hasTerms(sellers.get(offer.seller))) continue;
    const first = firstAt.get(offer.seller);
    if (first === undefined) firstAt.set(offer.seller, offer.food);
    else group.set(root(offer.food), root(first));
  }
  const parts = new Map<string, { needs: Need[]; usable: Usable[] }>();
  for (const need of [...needs].sort((a, b) => byText(a.food, b.food))) {
    const key = root(need.food);
    if (!parts.has(key)) parts.set(key, { needs: [], usable: [] });
    parts.get(key)!.needs.push(need);
  }
  for (const u of usable) parts.get(root(u.offer.food))!.usable.push(u);
  return [...parts.values()];
}

/** Columns: packs of each offer, then for each seller with terms whether it is used. */
interface Program {
  readonly offers: number;
  readonly rows: LinearModel['rows'];
  readonly upper: readonly number[];
  readonly money: readonly number[];
  /** g as mixed, bought; what is left over is this less what is needed. */
  readonly grams: readonly number[];
  readonly needed: number;
  readonly holds: (packs: readonly number[]) => boolean;
  /** The columns of sellers that follow from the packs. */
  readonly completed: (packs: readonly number[]) => number[];
}

function programOf(
  needs: readonly Need[],
  usable: readonly Usable[],
  sellers: ReadonlyMap<string, Seller>,
): Program {
  const withTerms = [...new Set(usable.map((u) => u.offer.seller))]
    .map((name) => sellers.get(name))
    .filter((s): s is Seller => s !== undefined && hasTerms(s));
  const n = usable.length;
  const width = n + withTerms.length;
  const zeros = () => new Array<number>(width).fill(0);
  const gramsOf = new Map(needs.map((need) => [need.food, need.grams]));
  // No best choice has more packs than meet the need alone, or reach the minimum order alone.
  const upper = usable.map(({ offer, gives }) => {
    const least = sellers.get(offer.seller)?.minimumOrder ?? 0;
    const forNeed = Math.ceil(gramsOf.get(offer.food)! / gives);
    return forNeed + (least > 0 && offer.price > 0 ? Math.ceil(least / offer.price) : 0);
  });
  const rows: { coefficients: number[]; min?: number; max?: number }[] = needs.map((need) => {
    const coefficients = zeros();
    usable.forEach((u, i) => {
      if (u.offer.food === need.food) coefficients[i] = u.gives / need.grams;
    });
    return { coefficients, min: 1 };
  });
  withTerms.forEach((s, k) => {
    const here = usable.map((u) => u.offer.seller === s.seller);
    here.forEach((is, i) => {
      if (!is) return;
      const coefficients = zeros();
      coefficients[i] = 1;
      coefficients[n + k] = -upper[i]!;
      rows.push({ coefficients, max: 0 });
    });
    if ((s.minimumOrder ?? 0) > 0) {
      const coefficients = zeros();
      usable.forEach((u, i) => {
        if (here[i]) coefficients[i] = u.offer.price / s.minimumOrder!;
      });
      coefficients[n + k] = -1;
      rows.push({ coefficients, min: 0 });
    }
  });
  const completed = (packs: readonly number[]) => [
    ...packs,
    ...withTerms.map((s) => (usable.some((u, i) => u.offer.seller === s.seller && packs[i]! > 0) ? 1 : 0)),
  ];
  return {
    offers: n,
    rows,
    upper: [...upper, ...withTerms.map(() => 1)],
    money: [...usable.map((u) => u.offer.price), ...withTerms.map((s) => s.delivery ?? 0)],
    grams: [...usable.map((u) => u.gives), ...withTerms.map(() => 0)],
    needed: needs.reduce((sum, need) => sum + need.grams, 0),
    completed,
    holds: (packs) => {
      const x = completed(packs);
      return rows.every(({ coefficients, min = -Infinity, max = Infinity }) => {
        const value = dot(coefficients, x);
        return value >= min - NEAR && value <= max + NEAR;
      });
    },
  };
}

interface Choice {
  readonly packs: number[];
  readonly proven: boolean;
}

/** First the aim, then the other, then fewest packs and offers first by id: each without giving up the one before. */
function solveGroup(program: Program, aim: PackAim, highs: Highs): Choice | undefined {
  const { offers, money, grams, upper } = program;
  // One offer and nothing else to pay: as many packs as it takes.
  if (offers === 1 && upper.length === 1) {
    const packs = [Math.ceil(1 / program.rows[0]!.coefficients[0]! - NEAR)];
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

function dot(a: readonly number[], b: readonly number[]): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += a[i]! * b[i]!;
  return sum;
}

function summed(
  wanted: readonly Need[],
  usable: readonly Usable[],
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
