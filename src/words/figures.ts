/** Numbers, weights, days and lists as people of a language write them. */
import { GRAMS_PER_OUNCE, type Language, type Manner } from './manner.ts';

/** Day before month in all three: English as in Britain, where the number of a day is never the number of a month. */
const LOCALES: Readonly<Record<Language, string>> = { en: 'en-GB', de: 'de-DE', nl: 'nl-NL' };

/** g; a light animal changes by less than a gram where it matters. */
const WHOLE_GRAMS_FROM = 30;

/** Forms of one word by number; English, German and Dutch tell one from all others. */
export interface Forms {
  readonly one: string;
  readonly other: string;
}

export interface Figures {
  readonly manner: Manner;
  /** BCP 47, for dates and collation. */
  readonly locale: string;
  /** "6.25", "6,25"; no digits after the last one that counts. @param most decimals */
  number(value: number, most?: number): string;
  /** With just so many decimals. */
  fixed(value: number, decimals: number): string;
  /** A number that fits its size: no more decimals than matter. */
  figure(value: number): string;
  /** "21 g", or in ounces. @param most decimals of the grams */
  grams(grams: number, most?: number): string;
  /**
   * Body weight off a smoothed line: to the gram from 30 g on, as most scales show it, to a tenth below; or in ounces.
   * What a scale showed is told as it was noted, by {@link grams}.
   */
  bodyGrams(grams: number): string;
  /** "1.2 kg" from 1000 g on, else grams; or in ounces and pounds. */
  weight(grams: number): string;
  /** The name of the small unit of weight: "g" or "oz". */
  readonly massUnit: 'g' | 'oz';
  /** Grams in that unit, and back. */
  mass(grams: number): number;
  gramsOf(mass: number): number;
  /** "5.4 %". */
  percent(value: number, most?: number): string;
  /** "60 °C", or in Fahrenheit. */
  degrees(celsius: number): string;
  readonly heatUnit: '°C' | '°F';
  heat(celsius: number): number;
  celsiusOf(heat: number): number;
  /** "€ 4.20". */
  money(amount: number): string;
  /** The sign of the currency. */
  readonly currency: string;
  /** "14 March"; with the year where it is not that of `beside`. @param day ISO 8601 */
  day(day: string, beside?: string): string;
  /** "Sat 14 Mar". @param day ISO 8601 */
  shortDay(day: string): string;
  /** "Saturday". @param day ISO 8601 */
  weekday(day: string): string;
  /** "March 2026". @param day ISO 8601, any of the month */
  month(day: string): string;
  /** "14:30" of the clock. */
  clock(hours: number, minutes: number): string;
  /** "a, b and c"; nothing for an empty list. */
  list(parts: readonly string[]): string;
  /** "a, b or c". */
  either(parts: readonly string[]): string;
  /** "1 day", "3 days": the number and the form that goes with it. */
  count(n: number, forms: Forms): string;
  /** The form that goes with a number, without it. */
  form(n: number, forms: Forms): string;
}

/** Formats of `Intl` are costly to make, so each is made once, when first used. @param manner language and units */
export function figuresOf(manner: Manner): Figures {
  const locale = LOCALES[manner.language];
  const numbers = new Map<string, Intl.NumberFormat>();
  const decimal = (least: number, most: number) => {
    const key = `${least} ${most}`;
    let format = numbers.get(key);
    if (!format) {
      format = new Intl.NumberFormat(locale, {
        minimumFractionDigits: least,
        maximumFractionDigits: most,
        // "1234 g" is what a scale shows, and a dot would be read as a decimal sign.
        useGrouping: false,
      });
      numbers.set(key, format);
    }
    return format;
  };
  const date = (options: Intl.DateTimeFormatOptions) => {
    let format: Intl.DateTimeFormat | undefined;
    return (day: string) => {
      format ??= new Intl.DateTimeFormat(locale, { ...options, timeZone: 'UTC' });
      return format.format(new Date(`${day}T00:00:00Z`));
    };
  };
  const inYear = date({ day: 'numeric', month: 'long' });
  const whole = date({ day: 'numeric', month: 'long', year: 'numeric' });
  const short = date({ weekday: 'short', day: 'numeric', month: 'short' });
  const weekday = date({ weekday: 'long' });
  const month = date({ month: 'long', year: 'numeric' });
  const and = madeOnce(() => new Intl.ListFormat(locale));
  const or = madeOnce(() => new Intl.ListFormat(locale, { type: 'disjunction' }));
  const plural = madeOnce(() => new Intl.PluralRules(locale));
  const money = madeOnce(
    () => new Intl.NumberFormat(locale, { style: 'currency', currency: manner.currency }),
  );
  const ounces = manner.mass === 'oz';
  const fahrenheit = manner.heat === 'F';

  const number = (value: number, most = 2) => decimal(0, most).format(unsigned(value, most));
  const figure = (value: number) => {
    const size = Math.abs(value);
    return number(value, size >= 100 ? 0 : size >= 10 ? 1 : size >= 0.1 || size === 0 ? 2 : 4);
  };
  const mass = (grams: number) => (ounces ? grams / GRAMS_PER_OUNCE : grams);
  const heat = (celsius: number) => (fahrenheit ? celsius * 1.8 + 32 : celsius);
  const grams = (g: number, most = 2) => (ounces ? `${number(mass(g), 2)} oz` : `${number(g, most)} g`);
  const form = (n: number, forms: Forms) => (plural().select(n) === 'one' ? forms.one : forms.other);
  const heatUnit = fahrenheit ? '°F' : '°C';
  return {
    manner,
    locale,
    number,
    fixed: (value, decimals) => decimal(decimals, decimals).format(unsigned(value, decimals)),
    figure,
    grams,
    bodyGrams: (g) => grams(g, g < WHOLE_GRAMS_FROM ? 1 : 0),
    weight: (g) => {
      if (ounces) return mass(g) < 16 ? grams(g) : `${number(mass(g) / 16, 2)} lb`;
      return Math.abs(g) < 1000 ? grams(g) : `${number(g / 1000, 2)} kg`;
    },
    massUnit: ounces ? 'oz' : 'g',
    mass,
    gramsOf: (m) => (ounces ? m * GRAMS_PER_OUNCE : m),
    percent: (value, most) => `${number(value, most)} %`,
    degrees: (celsius) => `${number(heat(celsius), fahrenheit ? 0 : 1)} ${heatUnit}`,
    heatUnit,
    heat,
    celsiusOf: (h) => (fahrenheit ? (h - 32) / 1.8 : h),
    money: (amount) => money().format(amount),
    get currency() {
      const sign = money()
        .formatToParts(0)
        .find((part) => part.type === 'currency');
      return sign?.value ?? manner.currency;
    },
    day: (day, beside) => (beside?.slice(0, 4) === day.slice(0, 4) ? inYear(day) : whole(day)),
    shortDay: (day) => short(day).replace(',', ''),
    weekday,
    month,
    clock: (hours, minutes) => `${String(hours).padStart(2, '0')}:${String(minutes).padStart(2, '0')}`,
    list: (parts) => and().format(parts),
    either: (parts) => or().format(parts),
    count: (n, forms) => `${number(n)} ${form(n, forms)}`,
    form,
  };
}

function madeOnce<T>(make: () => T): () => T {
  let made: T | undefined;
  return () => {
    made ??= make();
    return made;
  };
}

/** Without the minus of a number that is shown as zero. */
function unsigned(value: number, decimals: number): number {
  return Math.abs(value) < 0.5 * 10 ** -decimals ? 0 : value;
}
