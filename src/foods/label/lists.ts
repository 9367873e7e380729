/**
 * Lists of ingredients: a percentage in one is the share of an ingredient and never what the food contains. Where it
 * is not plain whether a line is such a list, it is asked.
 */
import type { AttachableLine, Context } from './context.ts';
import type { Name } from './match.ts';
import type { Part } from './part.ts';
import { keyOf } from './tokens.ts';

/** Names that only an analysis has: "crude", moisture, ash. */
const ANALYTICAL =
  /(?:^|\s)(?:crude|raw|roh\w*|brut\w*|ruw\w*|crud\w*|moist\w*|feucht\w*|humid\w*|vocht\w*|humed\w*|ash|asche|cendres|ceniza\w*|energy|brennwert)/;
/** A line that ends or begins so goes on from one to the next. */
const GOES_ON = /(?:[,([&+-]|\b(?:and|und|et|en|y|e|with|mit|avec|met|con))\s*$/i;
const CARRIES_ON = /^\s*[\p{Ll})\]&+,]/u;
/** A blank line, or a word between that is no part of a list. */
const ASIDE = /^[^\d,;]{0,12}$/;
const FARTHEST_ASIDE = 3;
/** Longer than this, a line that names a list holds something of it. */
const LONGEST_TITLE = 40;

/** Lines that a list of ingredients may run to. */
const LONGEST_LIST = 60;

export function isAnalytical(name: Name, heard: string): boolean {
  return name.tags[0] === 'ENERC_KCAL' || ANALYTICAL.test(keyOf(heard));
}

export class Lists {
  private readonly lines: readonly AttachableLine[];
  private readonly known = new Map<string, boolean>();
  private readonly inList = new Map<number, boolean>();
  private readonly reach = new Map<string, 'surely' | 'perhaps' | undefined>();
  private readonly contexts: readonly (readonly Context[])[];

  constructor(lines: readonly AttachableLine[], contexts: readonly (readonly Context[])[]) {
    this.lines = lines;
    this.contexts = contexts;
  }

  /** Whether an amount is surely or perhaps the share of an ingredient. */
  standing(
    part: Part & { readonly kind: 'amount' },
    line: number,
    { section, sectionLine }: Context,
  ): 'share' | 'perhaps' | undefined {
    if (isAnalytical(part.name, part.heard)) return undefined;
    const own = part.figures.every((f) => f.per !== undefined);
    if (section === 'ingredients' || section === 'composition') {
      const within = this.reachOf(sectionLine, line);
      if (within === undefined) return undefined;
      if (section === 'composition' && this.isAnalysis(sectionLine, line)) return undefined;
      const sure =
        within === 'surely' && (section === 'ingredients' || this.hasStrange(sectionLine, line, section));
      return sure && !own ? 'share' : 'perhaps';
    }
    const percent = part.figures.some((f) => f.unit === '%' && !f.per && !f.share);
    return section === undefined && percent && this.isInList(line) ? 'perhaps' : undefined;
  }

  private reachOf(from: number, to: number): 'surely' | 'perhaps' | undefined {
    const key = `${from} ${to}`;
    if (!this.reach.has(key)) this.reach.set(key, this.within(from, to));
    return this.reach.get(key);
  }

  /** Whether the list that begins on one line goes on to another. */
  private within(from: number, to: number): 'surely' | 'perhaps' | undefined {
    if (to - from > LONGEST_LIST) return 'perhaps';
    const texts = this.lines
      .slice(from, to + 1)
      .map((l) => l.text.trim())
      .filter((text, k) => k === 0 || !ASIDE.test(text));
    if (texts.length === 1) return 'surely';
    const [first = ''] = texts;
    if (first.length < LONGEST_TITLE && /^[^\d,;]{1,40}:?$/.test(first)) return 'surely';
    const goesOn = texts.slice(1).every((text, k) => GOES_ON.test(texts[k] ?? '') || CARRIES_ON.test(text));
    if (goesOn) return 'surely';
    const parts = this.lines[to]?.parts ?? [];
    const several = parts.filter((p) => p.kind === 'amount' || p.kind === 'missed').length > 1;
    return several && texts.length === 2 && !/\.\s*$/.test(first) ? 'perhaps' : undefined;
  }

  /** Whether a line under no heading, or one that it goes on from or to, holds shares of what is no nutrient. */
  private isInList(line: number): boolean {
    const known = this.inList.get(line);
    if (known !== undefined) return known;
    const text = (k: number) => this.lines[k]?.text ?? '';
    let [before, after] = [line - 1, line + 1];
    while (before >= line - FARTHEST_ASIDE && ASIDE.test(text(before))) before--;
    while (after <= line + FARTHEST_ASIDE && ASIDE.test(text(after))) after++;
    const found =
      this.hasStrange(line, line, undefined) ||
      (GOES_ON.test(text(line)) && this.hasStrange(after, after, undefined)) ||
      (before >= 0 && GOES_ON.test(text(before)) && this.hasStrange(before, before, undefined));
    this.inList.set(line, found);
    return found;
  }

  private hasStrange(from: number, to: number, section: Context['section']): boolean {
    return this.among(
      from,
      to,
      section,
      'strange',
      (p) => (p.kind === 'missed' && p.strangeShare === true) || (p.kind === 'heading' && p.listed === true),
    );
  }

  private isAnalysis(from: number, to: number): boolean {
    return this.among(
      from,
      to,
      'composition',
      'analysis',
      (p) => p.kind === 'amount' && isAnalytical(p.name, p.heard),
    );
  }

  /** Whether any part from one line to another that stands under a section is such a one; asked once for each line. */
  private among(
    from: number,
    to: number,
    section: Context['section'],
    what: string,
    is: (part: Part) => boolean,
  ): boolean {
    const key = `${from} ${to} ${section} ${what}`;
    let found = this.known.get(key);
    if (found === undefined) {
      found = this.lines
        .slice(from, to + 1)
        .some((l, k) => l.parts.some((p, j) => this.contexts[from + k]?.[j]?.section === section && is(p)));
      this.known.set(key, found);
    }
    return found;
  }
}
