/**
 * Labels drawn from a table of true figures: many layouts, bases, columns and languages, with junk between. What a
 * reader takes from one without a question must be the true figure, or a bound that is true of it.
 */
import type { Tag } from '../../../nutrition/nutrients.ts';
import { LANGUAGES, type Language } from '../reading.ts';
import { Draw } from './draw.ts';
import { mangled } from './mangle.ts';
import * as W from './words.ts';

export interface Paste {
  readonly text: string;
  /** Per 100 g as fed, in the unit of the tagname. */
  readonly truth: ReadonlyMap<Tag, number>;
}

/** A column of figures: its heading, and what it makes of the true content. */
interface Column {
  readonly head: string;
  /** The printed amount for a true content per 100 g; shares are figures of their own. */
  readonly of: 'amount' | 'share';
  readonly factor: number;
  readonly bound?: 'min' | 'max';
  /** Printed only as percent of weight, whatever the heading says it is of. */
  readonly percent?: boolean;
}

const KJ = 4.184;

export function paste(seed: number): Paste {
  return new Writer(new Draw(seed)).paste();
}

class Writer {
  private readonly d: Draw;
  private readonly lang: Language;
  private readonly comma: boolean;
  private readonly truth: Map<Tag, number>;
  private readonly moisture: number;
  private readonly food: boolean;
  private readonly unit: string;

  constructor(d: Draw) {
    this.d = d;
    this.lang = d.one(LANGUAGES);
    this.comma = this.lang !== 'en';
    this.moisture = Math.round(d.between(4, 14));
    this.food = d.chance(0.5);
    this.unit = d.one([' g', 'g', ' g']);
    const fat = d.between(2, 14);
    const carbohydrate = d.between(40, 62);
    const fibre = d.between(4, 14);
    this.truth = new Map<Tag, number>([
      ['WATER', this.moisture],
      ['PROCNT', d.between(8, 24)],
      ['FAT', fat],
      ['FASAT', fat * d.between(0.1, 0.5)],
      ['FIBC', fibre * 0.5],
      ['FIBTG', fibre],
      ['CHOCDF', carbohydrate],
      ['SUGAR', d.between(0.5, 9)],
      ['ASH', d.between(2, 6)],
      ['CA', d.between(100, 1200)],
      ['P', d.between(200, 900)],
      ['NA', d.between(20, 400)],
      ['FE', d.between(3, 20)],
      ['ZN', d.between(2, 12)],
      ['VITA_IU', d.between(300, 2500)],
      ['ENERC_KCAL', d.between(280, 420)],
    ]);
  }

  paste(): Paste {
    const { d } = this;
    const blocks: string[][] = [];
    if (d.chance(0.5)) blocks.push([d.one(W.TITLES)]);
    if (d.chance(0.3)) blocks.push(this.ingredients());
    blocks.push(
      ...d
        .one([this.table, this.table, this.line, this.line, this.sections, this.blocks, this.own])
        .call(this),
    );
    if (d.chance(0.3)) blocks.push(this.additives());
    if (d.chance(0.2)) blocks.push([d.one(W.TITLES)]);
    const lines = d.chance(0.8) ? mangled(blocks.flat(), d) : blocks.flat();
    return { text: lines.join('\n'), truth: this.truth };
  }

  private word(words: Readonly<Record<Language, readonly string[]>>): string {
    return this.d.one(words[this.lang]);
  }

  private nutrients(most = 7): W.Named[] {
    const kind = this.food ? 'food' : 'feed';
    const fit = W.NAMED.filter((n) => n.on === kind || n.on === 'both');
    return this.d.shuffled(fit).slice(0, 2 + Math.floor(this.d.next() * most));
  }

  private digits(value: number, places = 2): string {
    const text = value >= 100 ? value.toFixed(0) : String(Number(value.toFixed(places)));
    return this.comma ? text.replace('.', ',') : text;
  }

  /** One figure as a column prints it. */
  private figure({ tag }: W.Named, column: Column): string {
    const { d } = this;
    if (column.of === 'share') return `${Math.round(d.between(1, 90))}${d.one([' %', '%'])}`;
    let content = this.truth.get(tag) ?? 0;
    // A European label leaves the fibre out of its carbohydrate.
    if (tag === 'CHOCDF') content -= this.truth.get('FIBTG') ?? 0;
    if (column.bound === 'min') content *= d.between(0.85, 0.97);
    if (column.bound === 'max') content *= d.between(1.03, 1.15);
    const amount = content * column.factor;
    if (tag === 'ENERC_KCAL')
      return d.one([
        `${this.digits(amount)} kcal`,
        `${this.digits(amount * KJ)} kJ / ${this.digits(amount)} kcal`,
      ]);
    if (tag === 'CA' || tag === 'P')
      return column.percent ? `${this.digits(amount / 1000)} %` : `${this.digits(amount)} mg`;
    return column.percent
      ? `${this.digits(amount)}${d.one([' %', '%'])}`
      : `${this.digits(amount)}${this.unit}`;
  }

  private column(): Column {
    const { d } = this;
    const per = this.word(W.PER);
    const dry = 100 / (100 - this.moisture);
    const grams = d.one([100, 100, 100, 1000, 30, 40, 250]);
    const weight = grams === 1000 && d.chance(0.5) ? `${per} kg` : `${per} ${grams}${d.one([' g', 'g'])}`;
    const factor = grams / 100;
    const kind = d.next();
    if (kind < 0.35) return { head: weight, of: 'amount', factor };
    if (kind < 0.45)
      return { head: `${weight} ${this.word(W.PREPARED)}`, of: 'amount', factor: factor * 0.31 };
    if (kind < 0.55) return { head: `${weight} ${this.word(W.DRY)}`, of: 'amount', factor: factor * dry };
    if (kind < 0.65) return { head: `${this.sure(per)} ${this.word(W.PIECE)}`, of: 'amount', factor: 0.073 };
    if (kind < 0.75) {
      const g = d.one([25, 30, 40]);
      return { head: `${per} ${this.word(W.SERVING)} (${g} g)`, of: 'amount', factor: g / 100 };
    }
    if (kind < 0.85) return { head: this.word(W.DAILY), of: 'share', factor: 0 };
    if (kind < 0.9) return { head: this.word(W.ENERGY_SHARE), of: 'share', factor: 0 };
    return { head: this.word(W.DRY), of: 'amount', factor: dry, percent: true };
  }

  /** "In" may stand before anything; the other words mean "per" alone. */
  private sure(per: string): string {
    return per === 'in' ? 'per' : per;
  }

  private moistureLine(): string[] {
    const names = { en: 'Moisture', de: 'Feuchtigkeit', fr: 'Humidité', nl: 'Vocht', es: 'Humedad' };
    return this.d.chance(0.8) ? [`${names[this.lang]} ${this.moisture} %`] : [];
  }

  /** A table: a row a nutrient, a column a quantity. */
  private table(): string[][] {
    const { d } = this;
    const columns = [
      this.column(),
      ...(d.chance(0.6) ? [this.column()] : []),
      ...(d.chance(0.2) ? [this.column()] : []),
    ];
    const by = d.one(['\t', '   ', ' ']);
    const rows = this.nutrients().map((n) =>
      [d.one(n.names[this.lang]), ...columns.map((c) => (d.chance(0.05) ? '' : this.figure(n, c)))].join(by),
    );
    const heads = columns.map((c) => c.head);
    const title = d.chance(0.6) ? this.word(W.NUTRITION) : '';
    const head = d.chance(0.8)
      ? [[title, ...heads].filter(Boolean).join(by)]
      : [...(title ? [title] : []), ...heads];
    const dry = columns.some((c) => c.percent);
    return [head, rows, ...(dry || d.chance(0.3) ? [this.moistureLine()] : [])];
  }

  /** All in one line, or one a line, under one heading; percent or grams. */
  private line(): string[][] {
    const { d } = this;
    const percent: Column = { head: '', of: 'amount', factor: 1, percent: true };
    const dry = 100 / (100 - this.moisture);
    const column = d.one<() => Column>([
      () => percent,
      () => this.column(),
      () => ({ ...percent, head: this.word(W.DRY), factor: dry }),
      () => ({ ...percent, head: this.word(W.MIN), bound: 'min' }),
      () => ({ ...percent, head: this.word(W.MAX), bound: 'max' }),
      () => ({ ...percent, head: this.word(W.ENERGY_SHARE), of: 'share' }),
      () => ({
        ...percent,
        head: `${this.sure(this.word(W.PER))} 100 g ${this.word(W.PREPARED)}`,
        factor: 0.31,
      }),
    ])();
    const valueFirst = d.chance(0.25);
    const list = this.nutrients().filter((n) => !(column.percent && n.tag === 'ENERC_KCAL'));
    const amounts = list.map((n) => {
      const name = d.one(n.names[this.lang]);
      return valueFirst
        ? `${this.figure(n, column)} ${name}`
        : `${name}${d.one([' ', ': ', ' '])}${this.figure(n, column)}`;
    });
    const title = this.word(this.food ? W.NUTRITION : W.CONSTITUENTS);
    const head = d
      .one([`${title} ${column.head}`, `${title} (${column.head})`, column.head || title])
      .replace(' ()', '');
    const by = d.one([', ', '; ', '\n']);
    const after = d.chance(0.1) && column.head !== '' && !column.bound;
    const whole = amounts.join(by);
    const body = after
      ? `${whole}${by === '\n' ? '\n' : ' '}${column.head}`
      : `${head}${by === '\n' ? '\n' : ': '}${whole}`;
    return [body.split('\n'), ...(column.percent ? [this.moistureLine()] : [])];
  }

  /** Two sections one below the other, with a heading each. */
  private sections(): string[][] {
    const [one, other] = [this.column(), this.column()];
    const all = this.d.shuffled(this.nutrients());
    const cut = Math.max(1, Math.floor(all.length / 2));
    const rows = (list: W.Named[], c: Column) =>
      list.map((n) => `${this.d.one(n.names[this.lang])} ${this.figure(n, c)}`);
    return [
      [one.head, ...rows(all.slice(0, cut), one)],
      [other.head, ...rows(all.slice(cut), other)],
      this.moistureLine(),
    ];
  }

  /** A column of names, then a column of figures; or each figure on the line after its name. */
  private blocks(): string[][] {
    const column = this.column();
    const list = this.nutrients();
    const names = list.map((n) => this.d.one(n.names[this.lang]));
    const figures = list.map((n) => this.figure(n, column));
    if (this.d.chance(0.5)) return [[column.head], names.flatMap((name, k) => [name, figures[k] ?? ''])];
    return this.d.chance(0.5) ? [[column.head], names, figures] : [names, [column.head], figures];
  }

  /** Each figure with a denominator of its own. */
  private own(): string[][] {
    const { d } = this;
    const dry = d.chance(0.4);
    const lines = this.nutrients().map((n) => {
      const name = d.one(n.names[this.lang]);
      const [per, factor] = d.one([
        ['/kg', 10],
        ['/100 g', 1],
        ['/lb', 4.5359237],
        [`/${this.word(W.PIECE)}`, 0.073],
        [` ${this.sure(this.word(W.PER))} kg`, 10],
        [` ${this.sure(this.word(W.PER))} ${this.word(W.PIECE)}`, 0.073],
      ] as const);
      const basis = dry ? 100 / (100 - this.moisture) : 1;
      return `${name} ${this.figure(n, { head: '', of: 'amount', factor: factor * basis })}${per}`;
    });
    const by = d.one([', ', '\n']);
    return [...(dry ? [[this.word(W.DRY)]] : []), lines.join(by).split('\n'), this.moistureLine()];
  }

  /** What is put in, per kg: less than what the food holds. */
  private additives(): string[] {
    const { d } = this;
    const list = W.NAMED.filter((n) => n.on === 'additive').map((n) => {
      const part = (this.truth.get(n.tag) ?? 0) * 10 * d.between(0.3, 0.9);
      const unit = n.tag === 'VITA_IU' ? d.one(['IU', 'IE', 'UI']) : 'mg';
      const printed =
        n.tag === 'VITA_IU' ? Math.round(part).toLocaleString(d.one(['en', 'de', 'fr'])) : this.digits(part);
      return `${d.one(n.names[this.lang])} ${printed} ${unit}`;
    });
    return [`${this.word(W.ADDITIVES)} ${this.sure(this.word(W.PER))} kg: ${list.join(', ')}`];
  }

  private ingredients(): string[] {
    const { d } = this;
    const sugar = W.NAMED.find((n) => n.tag === 'SUGAR')?.names[this.lang].at(-1) ?? '';
    const calcium = W.NAMED.find((n) => n.tag === 'CA')?.names[this.lang].at(-1) ?? '';
    const items = d.shuffled([...d.some(W.GRAINS[this.lang], 0.8), sugar, calcium]).map((name) => {
      const share = `${Math.round(d.between(1, 40))} %`;
      return d.one([`${name} ${share}`, `${name} (${share})`, `${share} ${name}`, name]);
    });
    // Without a word over it, a list must show itself by what is no nutrient.
    const strange = items.filter((item) => /%/.test(item)).length > 3;
    const head = !strange || d.chance(0.85) ? `${this.word(W.INGREDIENTS)}: ` : '';
    const list = `${head}${items.join(', ')}${d.chance(0.5) ? '.' : ''}`;
    // Wrapped at a comma now and then.
    return d.chance(0.2) ? list.replace(/, /, ',\n').split('\n') : [list];
  }
}
