/**
 * What holds for a figure by where it stands: the headings over it, the section, a list of ingredients. A heading
 * holds until the next; one alone on the label holds for what stands before it too, and so does one that stands after
 * figures as a note.
 */
import type { Column, Heading } from './columns.ts';
import type { LineParts, Part, Section } from './part.ts';
import type { Basis, Bound } from './quantity.ts';
import { headingRuns, noteOf, type Placed, type Run } from './runs.ts';

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

/** The context of every part, line by line. */
export function contextsOf(lines: readonly AttachableLine[]): Context[][] {
  return new Walk(lines).contexts();
}

class Walk {
  private readonly lines: readonly AttachableLine[];
  private readonly flat: readonly Placed[];
  private readonly runs: readonly Run[];
  private readonly weighty: readonly Run[];
  private heading = NO_HEADING;
  private bound: Bound | undefined;
  /** Whether a figure has stood under the bound. */
  private boundUsed = false;
  private lineBound: Bound | undefined;
  private boundLine = -1;
  private section: Section | undefined;
  private sectionLine = -1;
  private headedLine = -1;
  private carried: string | undefined;

  constructor(lines: readonly AttachableLine[]) {
    this.lines = lines;
    this.flat = lines.flatMap((l, line) => l.parts.map((part) => ({ part, line })));
    this.runs = headingRuns(lines, this.flat);
    this.weighty = this.runs.filter((run) => run.weighty);
  }

  contexts(): Context[][] {
    const { runs } = this;
    const [sole, ...others] = this.weighty;
    const lastAmount = this.flat.findLastIndex(({ part }) => part.kind === 'amount');
    if (sole && others.length === 0) this.startUnder(sole, lastAmount);
    // A note after the last figure holds for figures under other headings; which of them, nobody can say.
    const ends =
      others.length === 0
        ? []
        : this.weighty.flatMap((run) => (run.from > lastAmount ? (noteOf(run) ?? []) : []));
    const found: Context[][] = this.lines.map(() => []);
    let run = 0;
    this.flat.forEach(({ part, line }, at) => {
      const current = runs[run];
      if (current && at === current.from) this.enter(current, line);
      if (current && at >= current.to) run++;
      if (part.kind === 'section' && part.section !== 'vitamins') this.enterSection(part.section, line);
      this.boundUsed ||= part.kind === 'amount' && this.bound !== undefined;
      this.takeLineBound(part, line);
      const note = this.noteAfter(runs[run]);
      const unclear = [this.heading.unclear, this.carried, note.unclear, ...ends].filter(
        (w) => w !== undefined,
      );
      found[line]?.push({
        heading: note.heading ?? this.heading,
        bound: this.lineBound ?? this.bound,
        section: this.section,
        sectionLine: this.sectionLine,
        unclear: unclear.length > 0 ? [...new Set(unclear)].join('; ') : undefined,
      });
    });
    return found;
  }

  /** The only heading of a label holds for what stands before it, unless something strange was printed there. */
  private startUnder(sole: Run, lastAmount: number): void {
    if (sole.additives) return;
    const footer = sole.trails || sole.from > lastAmount;
    const strange = this.lines.findIndex((l) => l.strange && !l.parts.some((p) => p.kind === 'amount'));
    if (footer) {
      this.heading = sole.heading;
      this.bound = sideOf(boundOf(sole.heading));
    } else if (strange >= 0 && strange < sole.line)
      this.heading = { ...sole.heading, columns: [], printed: [], unclear: noteOf(sole) };
    else this.heading = withoutBounds(sole.heading);
  }

  private enter(run: Run, line: number): void {
    const next = run.heading;
    this.headedLine = line;
    if (!run.weighty) {
      this.heading = { ...this.heading, shares: [...this.heading.shares, ...next.shares] };
      return;
    }
    if (next.columns.length === 0 && !next.unclear) return;
    this.carried = carriedBasis(this.heading, next, this.section, this.carried);
    this.heading = next;
    const side = boundOf(next);
    if (side === undefined) return;
    this.bound = sideOf(side);
    this.boundUsed = false;
  }

  private enterSection(section: Section, line: number): void {
    if (this.headedLine < line) this.heading = { ...this.heading, shares: [] };
    // What is added per kg stands under no heading but its own.
    if (section === 'additives' && this.headedLine < line) {
      this.heading = NO_HEADING;
      this.bound = undefined;
    }
    this.section = section;
    this.sectionLine = line;
    // A new section after figures is bound by no heading before it.
    if (this.boundUsed) this.bound = undefined;
  }

  private takeLineBound(part: Part, line: number): void {
    if (line !== this.boundLine) this.lineBound = undefined;
    if (part.kind !== 'heading' || !part.lineOnly) return;
    [this.lineBound] = part.atoms.flatMap((a) => (a.kind === 'bound' ? [sideOf(a.side)] : []));
    this.boundLine = line;
  }

  /** What the next run says of figures before it, if it is a note: their heading where they have none, else a doubt. */
  private noteAfter(next: Run | undefined): { heading?: Heading; unclear?: string } {
    if (!next?.trails || (next.weighty && this.weighty.length < 2)) return {};
    const bare = this.heading.columns.length === 0 && this.heading.unclear === undefined;
    if (bare && next.weighty) {
      const shares = [...this.heading.shares, ...next.heading.shares];
      return { heading: { ...next.heading, shares }, unclear: next.heading.unclear };
    }
    return { unclear: noteOf(next) };
  }
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
