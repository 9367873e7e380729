/** A label pasted or its figures typed: what was read of it, and at once what it leaves open. */
import { useEffect, useMemo, useState } from 'react';
import { Label, Text, TextArea, TextField } from 'react-aria-components';
import { amountWords } from '../../foods/figure-words.ts';
import { countOf } from '../../foods/figures.ts';
import { impossible } from '../../foods/label/faults.ts';
import { withLabelSd } from '../../foods/label/form.ts';
import type { GivenFigures } from '../../household/reckon/foods/label-source.ts';
import {
  type Missing,
  type MissingAnswers,
  missingOnLabel,
  withAnswers,
} from '../../household/reckon/foods/missing-on-label.ts';
import { nutrient, type Tag } from '../../nutrition/nutrients.ts';
import { words } from '../../words/words.ts';
import { LabelFigures } from '../shared/label/LabelFigures.tsx';
import { LabelLines } from '../shared/label/LabelLines.tsx';
import { LabelQuestions } from '../shared/label/LabelQuestions.tsx';
import { usePastedLabel } from '../shared/label/usePastedLabel.ts';
import '../shared/label/label.css';
import { NumberInput } from '../shared/NumberInput.tsx';

export interface BoxFigures extends GivenFigures {
  /** What cannot be true; nothing is to be kept while there is any. */
  readonly fault?: string;
}

/** Shown of what was read; all else stands behind "more". */
const SHOWN: readonly Tag[] = ['PROCNT', 'FAT', 'FIBC', 'FIBTG', 'WATER', 'ASH', 'CA', 'P'];
/** Most characters of a label that the store keeps. */
const MOST_TEXT = 4000;

/** @param onChange undefined while there is no figure; give a function that stays the same */
export function LabelBox({
  kind,
  onChange,
}: {
  kind: 'mix' | 'pellet';
  onChange(figures: BoxFigures | undefined): void;
}) {
  const t = words().start.label;
  const pasted = usePastedLabel(undefined);
  const [answers, setAnswers] = useState<MissingAnswers>({});
  const { text, reading, questions, figures: read } = pasted;
  const missing = useMemo(() => missingOnLabel(read), [read]);

  const result = useMemo((): BoxFigures | undefined => {
    const figures = withAnswers(read, missing, answers);
    if (countOf(figures) === 0) return undefined;
    const fault =
      text.length > MOST_TEXT
        ? t.tooLong(text.length, MOST_TEXT)
        : impossible(figures, t.recheck)[0]?.message;
    return {
      figures: withLabelSd(figures, kind),
      basis: pasted.basis,
      ...(text.trim() !== '' && { printed: text }),
      ...(fault !== undefined && { fault }),
    };
  }, [read, missing, answers, kind, text, pasted.basis, t]);
  useEffect(() => onChange(result), [result, onChange]);

  const open = new Set(reading.questions.map((q) => q.id));
  const typed = text.trim() !== '';
  const said = SHOWN.flatMap((tag) => {
    const amount = amountWords(read, tag);
    return !isSaid(read, tag) ? [] : [`${nutrient(tag).name} ${amount}`];
  });
  const unread = reading.lines.filter((l) => l.kind === 'unread' && l.text.trim() !== '').length;
  return (
    <>
      <TextField
        className="wide start-label"
        value={text}
        onChange={pasted.setText}
        onBlur={pasted.readNow}
        isInvalid={result?.fault !== undefined}
        validationBehavior="aria"
      >
        <Label>{kind === 'pellet' ? t.pellet : t.food}</Label>
        <TextArea rows={4} spellCheck={false} autoComplete="off" autoCapitalize="off" />
        <Text slot="description" className="hint">
          {t.hint}
        </Text>
      </TextField>
      {typed && (
        <div className="start-read">
          <p role="status">{said.length > 0 ? t.read(said) : t.nothingRead}</p>
          {unread > 0 && <p className="hint">{t.unread(unread)}</p>}
          {questions.length > 0 && (
            <LabelQuestions
              questions={questions}
              answers={pasted.answers}
              lines={reading.lines}
              open={open}
              onAnswer={pasted.answer}
            />
          )}
          <details>
            <summary>{t.lineByLine}</summary>
            <LabelLines reading={reading} open={open} />
            <LabelFigures
              figures={pasted.figures}
              amounts={reading.amounts}
              notes={pasted.notes}
              waiting={
                new Set(reading.amounts.filter((a) => a.open.some((id) => open.has(id))).map((a) => a.tag))
              }
            />
          </details>
        </div>
      )}
      {missing.length > 0 && (
        <div className="start-missing">
          <p className={typed ? 'start-ask' : 'hint'}>{typed ? t.missing : t.orType}</p>
          <div className="fields">
            {missing.map(({ tag, side, printed }) => (
              <NumberInput
                key={tag}
                label={side === 'high' ? t.most[tag] : side === 'low' ? t.least[tag] : t.amount[tag]}
                unit="%"
                min={(side === 'high' ? printed : undefined) ?? 0}
                max={(side === 'low' ? printed : undefined) ?? 100}
                decimals={2}
                placeholder={t.notKnown}
                value={answers[tag]}
                onCommit={(value) => setAnswers((before) => ({ ...before, [tag]: value }))}
                hint={hintOf({ tag, side, printed })}
              />
            ))}
          </div>
        </div>
      )}
      {result?.fault !== undefined && (
        <p role="alert" className="field-error">
          {result.fault}
        </p>
      )}
    </>
  );
}

/** What the label says of it, and what comes of leaving the field empty. */
function hintOf({ tag, side, printed }: Missing): string | undefined {
  const t = words().start.label;
  if (printed === undefined) return undefined;
  if (side === 'low') return t.saysAtMost(printed);
  return tag === 'FAT' ? t.fatAtLeast(printed) : t.saysAtLeast(printed);
}

function isSaid({ composition, low, high }: BoxFigures['figures'], tag: Tag): boolean {
  return [composition, low, high].some((amounts) => amounts?.[tag] !== undefined);
}
