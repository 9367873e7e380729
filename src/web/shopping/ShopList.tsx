/** The list itself: what is to get, by groups, each food once; what is in the stock already stands behind it. */
import type { Mix } from '../../household/model.ts';
import { groupsIn } from '../../household/reckon/cupboard/lot-foods.ts';
import { driedAtHome } from '../../household/reckon/foods/fresh-food.ts';
import { broughtIn, toGet } from '../../household/reckon/shopping/basket.ts';
import type { BesideNeeds } from '../../household/reckon/shopping/beside-needs.ts';
import type { ShoppingLine, ShoppingList } from '../../kitchen/shopping/shopping-list.ts';
import { words } from '../../words/words.ts';
import { linkTo } from '../shared/route.ts';
import { Sentence } from '../shared/words/Sentence.tsx';
import { useKitchen } from '../store/kitchen.ts';
import { useMixDraft } from '../store/mix-draft.tsx';
import { BoughtBar } from './BoughtBar.tsx';
import { FromStock } from './FromStock.tsx';
import { ListLine } from './ListLine.tsx';
import { ListPaper } from './ListPaper.tsx';
import { Papers } from './Papers.tsx';
import type { Bringing, Buying } from './useBuying.ts';
import { bySection, linesToGet, listText, sectionOf } from './view-model.ts';

interface Props {
  readonly list: ShoppingList;
  readonly mix: Mix;
  /** What is fed beside it. */
  readonly beside: BesideNeeds | undefined;
  /** For how much of the mix it is, in a sentence. */
  readonly size: string;
  readonly buying: Buying;
  readonly stale: boolean;
}

export function ShopList({ list, mix, beside, size, buying, stale }: Props) {
  const { house } = useMixDraft();
  const { kitchen } = useKitchen();
  const t = words().shopping;
  const groupOf = groupsIn(house);
  const step = mix.problem.scale_step_grams;
  const dries = (food: string) => driedAtHome(house, food) !== undefined;
  const tickOf = (food: string) => kitchen.basket?.[food];
  const getOf = ({ food, ...line }: ShoppingLine) => toGet(line, dries(food) && !tickOf(food)?.home, step);
  const lines = linesToGet(list);
  const stocked = list.lines.filter((l) => l.toBuy === 0);
  const ticked = lines.filter((l) => tickOf(l.food));
  const sections = bySection(lines, (l) => (l.beside ? 'pellet' : groupOf(l.food)));
  const mayBeDried = (food: string) => ['vegetable', 'fruit', 'other'].includes(sectionOf(groupOf(food)));

  /** What comes in of these lines, and what is to be told with it. */
  function bringing(some: readonly ShoppingLine[]): Bringing {
    const each = some.map((line) => ({ line, bought: broughtIn(line, getOf(line), tickOf(line.food)) }));
    const home = some.some((l) => tickOf(l.food)?.home);
    return {
      purchases: each.flatMap((e) => e.bought),
      without: each.filter((e) => e.bought.length === 0).map((e) => e.line.name),
      notes: [...(home ? [t.told.home] : []), ...apart(some)],
    };
  }

  /** Sellers with terms of whose order only some is bought: the rest becomes an order of its own. */
  function apart(some: readonly ShoppingLine[]): string[] {
    const foods = new Set(some.map((l) => l.food));
    return (kitchen.sellers ?? []).flatMap(({ seller }) => {
      const of = lines.filter((l) => l.packs.some((p) => p.offer.seller === seller));
      const bought = of.filter((l) => foods.has(l.food)).length;
      return bought > 0 && bought < of.length ? [t.apart(seller)] : [];
    });
  }

  return (
    <>
      <section aria-label={t.list.label} className="shop-foods">
        <h2 className="shop-list-head" tabIndex={-1}>
          {lines.length > 0 ? t.list.count(lines.length) : t.list.nothing}
        </h2>
        {lines.length > 0 && <p className="hint">{t.list.hint}</p>}
        {sections.map(([section, own]) => (
          <section key={section} aria-label={t.list.groups[section]}>
            <h3>{t.list.groups[section]}</h3>
            {section === 'beside' && beside?.days !== undefined && (
              <p className="hint">{words().pelletStock.shop.hint(Math.round(beside.days))}</p>
            )}
            <ul>
              {own.map((line) => (
                <ListLine
                  key={line.food}
                  line={line}
                  get={getOf(line)}
                  step={step}
                  dried={mix.problem.foods.find((f) => f.id === line.food)?.ref}
                  mayBeDried={mayBeDried(line.food)}
                  why={list.missing.find((m) => m.food === line.food)?.why}
                  stale={stale}
                />
              ))}
            </ul>
          </section>
        ))}
        {beside && beside.unknown.length > 0 && (
          <p className="notice-line">
            <Sentence
              of={words().pelletStock.shop.unknown(beside.unknown)}
              with={{ animals: (text) => <a href={linkTo('animals')}>{text}</a> }}
            />
          </p>
        )}
        {stocked.length > 0 && (
          <details className="shop-stocked">
            <summary>{t.stocked.summary(stocked.length)}</summary>
            <ul>
              {stocked.map((line) => (
                <li key={line.food} id={`shop-${line.food}`}>
                  <strong>{line.name}</strong>
                  <FromStock line={line} />
                </li>
              ))}
            </ul>
          </details>
        )}
      </section>
      <BoughtBar
        buying={buying}
        all={bringing(lines)}
        ticked={bringing(ticked)}
        foods={lines.length}
        tickedFoods={ticked.length}
        stale={stale}
      />
      <Papers
        text={() => listText(list, { title: t.paper.title(mix.name), step, groupOf, driedAtHome: dries })}
      />
      <ListPaper
        list={list}
        title={mix.name}
        size={size}
        sections={sections}
        getOf={getOf}
        isTicked={(food) => tickOf(food) !== undefined}
      />
    </>
  );
}
