/** A label as it is pasted and its questions answered: read as the typing pauses, figures at every moment. */
import { useMemo, useRef, useState } from 'react';
import { countOf, plainFigures, sameFigures } from '../../../foods/figures.ts';
import type { Figures } from '../../../foods/food.ts';
import { figuresOf } from '../../../foods/label/figures.ts';
import { questionsOf } from '../../../foods/label/questions.ts';
import { readLabel } from '../../../foods/label/read.ts';
import type { Answers, LabelReading, Question } from '../../../foods/label/reading.ts';
import type { FoodSource } from '../../../foods/sources/source.ts';
import { useSettled } from '../hooks/settled.ts';

export interface PastedLabel {
  readonly text: string;
  setText(text: string): void;
  /** Reads what was typed now, not when the typing pauses. */
  readNow(): void;
  readonly reading: LabelReading;
  readonly questions: readonly Question[];
  readonly answers: Answers;
  /** Undefined takes the answer back. */
  answer(id: string, answer: string | undefined): void;
  readonly figures: Figures;
  readonly basis: 'as fed' | 'dry matter';
  /** What was reckoned rather than printed, in words. */
  readonly notes: readonly string[];
  /** The figures are those of the source as saved, which its text alone does not give. */
  readonly asSaved: boolean;
  /** Whether there is anything new since this was last asked. */
  takeChanged(): boolean;
}

const PAUSE_MS = 150;
const NONE: Answers = {};

/** @param source one whose label was kept: until text or answers change, its figures stand as they were saved */
export function usePastedLabel(source: FoodSource | undefined): PastedLabel {
  const [text, setText] = useState(source?.printed ?? '');
  const [answers, setAnswers] = useState<Answers>(NONE);
  const [settled, readNow] = useSettled(text, PAUSE_MS);
  const taken = useRef<unknown>(undefined);

  const reading = useMemo(() => readLabel(settled, answers), [settled, answers]);
  const questions = useMemo(() => questionsOf(settled, answers), [settled, answers]);
  const read = useMemo(() => figuresOf(reading), [reading]);
  const untouched = source?.printed !== undefined && text === source.printed && answers === NONE;
  const asSaved = untouched && !sameFigures(source, read.figures);
  const figures = useMemo(() => plainFigures(asSaved ? source : read.figures), [asSaved, source, read]);
  const dry = reading.amounts.some((a) => a.per.basis === 'dry matter' && a.open.length === 0);

  return {
    text,
    setText,
    readNow,
    reading,
    questions,
    answers,
    answer: (id, answer) =>
      setAnswers((before) => {
        const { [id]: _was, ...rest } = before;
        return answer === undefined ? rest : { ...rest, [id]: answer };
      }),
    figures,
    basis: asSaved ? source.basis : dry ? 'dry matter' : 'as fed',
    notes: asSaved ? [] : read.notes,
    asSaved,
    takeChanged: () => {
      const changed = !asSaved && countOf(figures) > 0 && taken.current !== read;
      taken.current = read;
      return changed;
    },
  };
}
