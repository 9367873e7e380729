/** A text cut where marks begin and end, so that it can be drawn with its found words marked. */
interface TextSpan {
  /** First character, and the one after the last. */
  readonly start: number;
  readonly end: number;
}

interface Piece {
  readonly text: string;
  /** Whether any mark covers it. */
  readonly marked: boolean;
  /** Indexes of the marks that end with it. */
  readonly ends: readonly number[];
}

/** The pieces joined are the text again; marks may overlap, empty ones and those outside the text are left out. */
export function markedText(text: string, spans: readonly TextSpan[]): Piece[] {
  const kept = spans
    .map((s, index) => ({ ...s, index }))
    .filter((s) => s.start < s.end && s.end <= text.length && s.start >= 0);
  const cuts = [...new Set([0, text.length, ...kept.flatMap((s) => [s.start, s.end])])].sort((a, b) => a - b);
  const pieces: Piece[] = [];
  let start = 0;
  for (const end of cuts.slice(1)) {
    pieces.push({
      text: text.slice(start, end),
      marked: coveredBy(kept, start, end),
      ends: kept.filter((s) => s.end === end).map((s) => s.index),
    });
    start = end;
  }
  return pieces;
}

function coveredBy(spans: readonly TextSpan[], start: number, end: number): boolean {
  return spans.some((s) => s.start <= start && s.end >= end);
}
