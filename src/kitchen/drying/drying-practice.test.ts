import { describe, expect, it } from 'vitest';
import checks from './checks.json' with { type: 'json' };
import data from './drying.json' with { type: 'json' };
import { dryingCautions, dryKindOf, waysToDry } from './drying-practice.ts';

describe('the figures', () => {
  it('name a source each, and say so where there is none', () => {
    const rows = [...data.ways, ...data.loads];
    for (const { source, known } of rows) {
      expect([known, source.startsWith('common practice, no source')]).toEqual([
        known,
        known === 'common practice',
      ]);
    }
    for (const { source } of [...data.keeps, ...data.cautions, checks])
      expect(source).toMatch(/\b(1[89]|20)\d\d\b|common practice, no source|USDA|Agrodok|Extension/);
  });

  it('give a way of the trade for vegetables in the oven, and a published one for every kind', () => {
    expect(waysToDry('vegetable', 'oven').map((w) => w.known)).toEqual(['common practice', 'published']);
    for (const kind of ['leaf', 'herb', 'fruit'] as const)
      expect(waysToDry(kind, 'oven').map((w) => w.known)).toEqual(['published']);
    for (const kind of ['vegetable', 'leaf', 'herb', 'fruit'] as const)
      expect(waysToDry(kind, 'dehydrator').map((w) => w.known)).toEqual(['published']);
  });

  it('never offer herbs and leaves more than 50 °C, and nothing but vegetables more than 60 °C', () => {
    for (const device of ['oven', 'dehydrator'] as const) {
      for (const kind of ['leaf', 'herb'] as const)
        for (const way of waysToDry(kind, device)) expect(way.celsius[1]).toBeLessThanOrEqual(50);
      for (const way of waysToDry('fruit', device)) expect(way.celsius[1]).toBeLessThanOrEqual(60);
    }
  });

  it('have a place for every kind of food: low before high', () => {
    for (const { celsius, hours } of data.ways) {
      expect(celsius[0]).toBeLessThanOrEqual(celsius[1]!);
      expect(hours[0]).toBeLessThanOrEqual(hours[1]!);
    }
  });
});

describe('what a food is on the tray', () => {
  it('follows from its group', () => {
    expect(dryKindOf('herb')).toBe('herb');
    expect(dryKindOf('fruit', 'Fig leaf')).toBe('fruit');
    expect(dryKindOf(undefined)).toBe('vegetable');
    expect(dryKindOf('animal', 'Egg in nettle')).toBe('vegetable');
  });
  it.each([
    [
      'leaf',
      'Kale, fresh; Swiss chard; Beet greens, fresh; Romaine lettuce; Chicory leaf, fresh; Carrot leaves',
    ],
    ['leaf', 'Spinat; Kopfsalat; Möhrengrün; Haselblätter; Himbeerblatt; Mangold'],
    ['leaf', 'Épinards; Feuilles de noisetier; Fanes de carotte; Roquette; Laitue romaine'],
    ['leaf', 'Boerenkool; Hazelaarbladeren; Wortelloof; Veldsla; Andijvie'],
    ['leaf', 'Espinacas; Hojas de avellano; Acelgas; Lechuga romana'],
    ['herb', 'Dandelion leaf; Nettle; Marigold petals; Peppermint; Pumpkin flower; Herb mix'],
    ['herb', 'Löwenzahn; Brennnesseln; Wiesenkräuter; Kornblumenblüten; Petersilie'],
    ['herb', 'Pissenlit; Orties; Fleurs de souci; Menthe poivrée; Persil plat'],
    ['herb', 'Paardenbloem; Brandnetels; Goudsbloemen; Lindebloesem; Munt'],
    ['herb', 'Diente de león; Ortigas; Flores de caléndula; Menta; Perejil'],
    [
      'vegetable',
      'Carrot, fresh; Cauliflower; Sunflower root; Chicory root; Courgette; Leek-free mix; Cleaver root',
    ],
    [
      'vegetable',
      'Karotte; Blumenkohl; Sellerie; Chou-fleur; Carotte; Bloemkool; Wortel; Coliflor; Zanahoria',
    ],
  ])('and, without one that says it, from its name: %s: %s', (kind, names) => {
    for (const name of names.split('; '))
      for (const group of [undefined, 'vegetable'] as const)
        expect([name, dryKindOf(group, name)]).toEqual([name, kind]);
  });
});

describe('what to heed', () => {
  const first = (device: 'oven' | 'dehydrator') =>
    dryingCautions(device).flatMap((c) => (c.heed === 'first' ? [c.sentence] : []));
  it('says first, with either device, to stay by it and what mould means', () => {
    for (const device of ['oven', 'dehydrator'] as const) {
      const said = first(device).join(' ');
      expect(said).toMatch(/never leave it running alone or overnight/);
      expect(said).toMatch(/catch fire/);
      expect(said).toMatch(/mould is thrown away/);
    }
  });
  it('warns of children and of the door only where it is an oven', () => {
    expect(first('oven').join(' ')).toMatch(/children.*door stands ajar/);
    expect(dryingCautions('dehydrator').map((c) => c.device)).not.toContain('oven');
  });
});
