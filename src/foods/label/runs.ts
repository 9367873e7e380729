/** Runs of headings: what stands together over figures, and what stands after them as a note. */
import { type Column, type Heading, headingOf, isWeighty, saysNothing } from './columns.ts';
import type { LineParts, Part, Section } from './part.ts';

export interface Placed {
  readonly part: Part;
  readonly line: number;
}

type HeadingPart = Part & { readonly kind: 'heading' };

export interface Run {
  readonly parts: readonly HeadingPart[];
  readonly heading: Heading;
  /** Place of its first and its last part. */
  readonly from: number;
  readonly to: number;
  readonly line: number;
  /** Whether it says what amounts are per or of; shares of a daily intake do not. */
  readonly weighty: boolean;
  /** No figure but moisture stands between it and what heads the next: it may be a note on the figures before it. */
  readonly trails: boolean;
  /** It heads what is added per kg. */
  readonly additives: boolean;
}

/** Sections that what stands before them does not head. */
const APART: readonly Section[] = ['additives', 'ingredients', 'composition'];

/** Words that may name one denominator. */
const FEW = 2;

/** The runs of headings among all parts, in order. */
export function headingRuns(lines: readonly LineParts[], flat: readonly Placed[]): Run[] {
  const sizes = sizesAmong(lines);
  const found: { parts: HeadingPart[]; from: number; to: number; line: number }[] = [];
  let open: (typeof found)[number] | undefined;
  let figures = false;
  for (const [at, { part, line }] of flat.entries()) {
    const another = part.kind === 'section' && APART.includes(part.section);
    if (part.kind === 'amount') figures = true;
    if (part.kind === 'amount' || (part.kind === 'missed' && !part.heads) || another) open = undefined;
    if (part.kind !== 'heading' || part.lineOnly || sizes.has(part)) continue;
    // "For hamsters" is a title; after figures "pour louchette" may say what the next are per.
    const strange = figures && part.forWords && part.atoms.length === 0 && part.words.length <= FEW;
    if (!strange && saysNothing(part)) continue;
    const heading = strange ? { ...part, atoms: [{ kind: 'each', text: part.text } as const] } : part;
    if (!open) {
      open = { parts: [], from: at, to: at, line };
      found.push(open);
    }
    open.parts.push(heading);
    open.to = at;
  }
  return found.map((run, k) => {
    const heading = headingOf(run.parts);
    const weighty = run.parts.some((p) => p.atoms.some(isWeighty)) || heading.unclear !== undefined;
    const until = found[k + 1]?.from ?? flat.length;
    const additives =
      lines[run.line]?.parts.some((p) => p.kind === 'section' && p.section === 'additives') ?? false;
    return { ...run, heading, weighty, trails: !additives && trails(flat, run.to + 1, until), additives };
  });
}

function trails(flat: readonly Placed[], from: number, until: number): boolean {
  for (let at = from; at < until; at++) {
    const part = flat[at]?.part;
    if (part?.kind === 'section' && part.section !== 'vitamins') return true;
    if (part?.kind === 'amount' && !part.name.tags.includes('WATER')) return false;
  }
  return true;
}

/** What a note after figures leaves open of those that other headings stand over. */
export function noteOf({ heading, parts }: Run): string | undefined {
  const based = heading.columns.some((c: Column) => c.basis !== undefined || c.bound !== undefined);
  const share = parts.some((p) => p.atoms.some((a) => a.kind === 'share' && a.of !== 'daily'));
  const open = based || share || heading.unclear !== undefined;
  return open ? parts.map((p) => p.text).join(' ') : undefined;
}

/** "Portion: 30 g" on a line of its own says how large a serving is, where another heading says what amounts are per. */
function sizesAmong(lines: readonly LineParts[]): ReadonlySet<Part> {
  const weightsOf = (parts: readonly Part[]) =>
    parts.flatMap((p) =>
      p.kind === 'heading'
        ? p.atoms.flatMap((a) =>
            a.kind === 'share' || a.kind === 'bound' || a.kind === 'percent' ? [] : [a],
          )
        : [],
    );
  const sizes = new Set(
    lines.filter(({ parts }) => {
      const [weight, ...others] = weightsOf(parts);
      return weight?.maySize && others.length === 0;
    }),
  );
  const firm = lines.some((l) => !sizes.has(l) && weightsOf(l.parts).length > 0);
  if (!firm) return new Set();
  return new Set(
    [...sizes].flatMap((l) => l.parts.filter((p) => p.kind === 'heading' && weightsOf([p]).length > 0)),
  );
}
