/**
 * What holds for a figure by where it stands: the headings over it, the section, a list of ingredients. A heading
 * holds until the next; one alone on the label holds for what stands before it too.
 */
import { type Column, type Heading, headingOf, isWeighty, saysNothing } from './columns.ts';
import type { Basis, Bound, LineParts, Part, Section } from './part.ts';

/** The parts of a line and its text. */
export interface AttachableLine extends LineParts {
  readonly text: string;
  /** Words the table does not know. */
  readonly strange: boolean;
}

export interface Context {
  readonly heading: Heading;
  /** Least or most that a heading of its own says of every figure. */
  readonly bound: Bound | undefined;
  readonly section: Section | undefined;
  /** Where the section was named. */
  readonly sectionLine: number;
  /** Words that leave open what the figures are of, whatever they themselves say. */
  readonly unclear: string | undefined;
}

const NO_HEADING: Heading = { columns: [], printed: [], shares: [] };

interface Run {
  readonly parts: (Part & { readonly kind: 'heading' })[];
  /** Place of its first and its last part. */
  readonly from: number;
  to: number;
  line: number;
}

/** The context of every part of kind "amount" or "missed", by its place among all parts. */
export function contextsOf(lines: readonly AttachableLine[]): Context[][] {
  const flat = lines.flatMap((l, line) => l.parts.map((part) => ({ part, line })));
  const runs = headingRuns(flat, sizesAmong(lines));
  const weighty = runs.filter((run) => run.parts.some((p) => p.atoms.some(isWeighty)) || unclearOf(run));
  const firstStrange = lines.findIndex((l) => l.strange && !l.parts.some((p) => p.kind === 'amount'));
  const [sole, ...others] = weighty;
  const alone = others.length === 0 ? sole : undefined;
  const soleHeading = alone && headingOf(alone.parts);
  let heading = NO_HEADING;
  let bound: Bound | undefined;
  let section: Section | undefined;
  let sectionLine = -1;
  let sharesLine = -1;
  let carried: string | undefined;
  let lineBound: Bound | undefined;
  let boundLine = -1;
  const isFooter = (run: Run) => !flat.slice(run.to + 1).some(({ part }) => part.kind === 'amount');
  const lastAmount = flat.findLastIndex(({ part }) => part.kind === 'amount');
  if (soleHeading && alone) {
    const footer = isFooter(alone);
    const strangeBefore = firstStrange >= 0 && firstStrange < alone.line && !footer;
    if (footer) {
      heading = soleHeading;
      bound = sideOf(boundOf(soleHeading));
    } else
      heading = strangeBefore ? { ...soleHeading, columns: [], printed: [] } : withoutBounds(soleHeading);
  }
  // A footnote on the basis holds for figures that other headings stand over; which of them, nobody can say.
  const notes = others.length === 0 ? [] : weighty.filter((run) => run.from > lastAmount).flatMap(footnote);
  const found: Context[][] = lines.map(() => []);
  let run = 0;
  flat.forEach(({ part, line }, at) => {
    const current = runs[run];
    if (current && at === current.from) {
      if (weighty.includes(current)) {
        const next = headingOf(current.parts);
        if (hasColumns(next) || next.unclear) {
          carried = carriedBasis(heading, next, section, carried);
          heading = next;
          const side = boundOf(next);
          if (side !== undefined) bound = sideOf(side);
        }
      } else heading = { ...heading, shares: [...heading.shares, ...headingOf(current.parts).shares] };
      sharesLine = line;
    }
    if (current && at >= current.to) run++;
    if (part.kind === 'section' && part.section !== 'vitamins') {
      if (sharesLine < line) heading = { ...heading, shares: [] };
      section = part.section;
      sectionLine = line;
    }
    if (line !== boundLine) lineBound = undefined;
    if (part.kind === 'heading' && part.lineOnly) {
      lineBound = part.atoms.flatMap((a) => (a.kind === 'bound' ? (sideOf(a.side) ?? []) : []))[0];
      boundLine = line;
    }
    const unclear = [heading.unclear, carried, ...notes].filter((words) => words !== undefined);
    found[line]?.push({
      heading,
      bound: lineBound ?? bound,
      section,
      sectionLine,
      unclear: unclear.length > 0 ? unclear.join('; ') : undefined,
    });
  });
  return found;
}

function headingRuns(
  flat: readonly { readonly part: Part; readonly line: number }[],
  sizes: ReadonlySet<Part>,
): Run[] {
  const runs: Run[] = [];
  let open: Run | undefined;
  flat.forEach(({ part, line }, at) => {
    if (part.kind === 'amount' || part.kind === 'missed') open = undefined;
    if (part.kind !== 'heading' || part.lineOnly || saysNothing(part) || sizes.has(part)) return;
    if (!open) {
      open = { parts: [], from: at, to: at, line };
      runs.push(open);
    }
    open.parts.push(part);
    open.to = at;
  });
  return runs;
}

/** "Portion: 30 g" on a line of its own says how large a serving is, where another heading says what amounts are per. */
function sizesAmong(lines: readonly AttachableLine[]): ReadonlySet<Part> {
  const weightsOf = (parts: readonly Part[]) =>
    parts.flatMap((p) =>
      p.kind === 'heading'
        ? p.atoms.flatMap((a) =>
            a.kind === 'share' || a.kind === 'bound' || a.kind === 'percent' ? [] : [a],
          )
        : [],
    );
  const sizes = lines.filter(({ parts }) => {
    const [weight, ...others] = weightsOf(parts);
    return weight?.maySize && others.length === 0;
  });
  const firm = lines.some((l) => !sizes.includes(l) && weightsOf(l.parts).length > 0);
  return new Set(
    firm
      ? sizes.flatMap((l) => l.parts.filter((p) => p.kind === 'heading' && weightsOf([p]).length > 0))
      : [],
  );
}

function unclearOf(run: Run): boolean {
  return headingOf(run.parts).unclear !== undefined;
}

function hasColumns(heading: Heading): boolean {
  return heading.columns.length > 0;
}

/** The bound of a heading whose columns all have the same one. */
function boundOf({ columns }: Heading): Bound | 'mean' | undefined {
  const sides = new Set(columns.map((c) => c.bound));
  const [side] = sides;
  return sides.size === 1 ? side : undefined;
}

function sideOf(side: Bound | 'mean' | undefined): Bound | undefined {
  return side === 'mean' ? undefined : side;
}

function withoutBounds(heading: Heading): Heading {
  const plain = (columns: readonly Column[]) =>
    columns.flatMap(({ bound: _, ...c }): Column[] => (c.quantity ? [c] : []));
  return { ...heading, columns: plain(heading.columns), printed: plain(heading.printed) };
}

/** What a heading after the last figure leaves open of the figures before it. */
function footnote(run: Run): string[] {
  const { columns, unclear } = headingOf(run.parts);
  const based = columns.some((c: Column) => c.basis !== undefined || c.bound !== undefined);
  return based || unclear !== undefined ? [run.parts.map((p) => p.text).join(' ')] : [];
}

/** After figures in dry matter a heading that says no basis leaves it open; additives are per kg of the feed. */
function carriedBasis(
  before: Heading,
  next: Heading,
  section: Section | undefined,
  carried: string | undefined,
): string | undefined {
  const bases = (h: Heading): Set<Basis | undefined> => new Set(h.columns.map((c) => c.basis));
  const was = bases(before);
  if (section === 'additives' || next.columns.length === 0 || !bases(next).has(undefined)) return undefined;
  if (carried !== undefined) return carried;
  if (!was.has('dry matter') && !was.has('prepared')) return undefined;
  return [...before.columns.map((c) => c.text), 'then', ...next.columns.map((c) => c.text)].join(' ');
}
