/** A label pasted or typed as printed, what was understood of it line by line, and what it comes to. */
import { Label, Text, TextArea, TextField } from 'react-aria-components';
import type { Tag } from '../../../nutrition/nutrients.ts';
import { words } from '../../../words/words.ts';
import { LabelFigures } from './LabelFigures.tsx';
import { LabelLines } from './LabelLines.tsx';
import { LabelQuestions } from './LabelQuestions.tsx';
import type { PastedLabel } from './usePastedLabel.ts';

interface Props {
  pasted: PastedLabel;
  /** What cannot be, which the text must be mended for. */
  isInvalid: boolean;
}

export function LabelPaste({ pasted, isInvalid }: Props) {
  const { text, reading, questions, answers, asSaved } = pasted;
  const t = words().label.paste;
  const open = new Set(asSaved ? [] : reading.questions.map((q) => q.id));
  const waiting = new Set<Tag>(
    reading.amounts.filter((a) => a.open.some((id) => open.has(id))).map((a) => a.tag),
  );
  return (
    <>
      <TextField
        className="wide label-paste"
        value={text}
        onChange={pasted.setText}
        onBlur={pasted.readNow}
        isInvalid={isInvalid}
        validationBehavior="aria"
      >
        <Label>{t.label}</Label>
        <TextArea rows={7} spellCheck={false} autoComplete="off" autoCapitalize="off" />
        <Text slot="description" className="hint">
          {t.hint}
        </Text>
      </TextField>
      {text.trim() !== '' && (
        <>
          {asSaved && (
            <p className="notice-line" role="status">
              {t.asSaved}
            </p>
          )}
          <LabelLines reading={reading} open={open} />
          {questions.length > 0 && (
            <LabelQuestions
              questions={questions}
              answers={answers}
              lines={reading.lines}
              open={open}
              onAnswer={pasted.answer}
            />
          )}
          <LabelFigures
            figures={pasted.figures}
            amounts={reading.amounts}
            notes={pasted.notes}
            waiting={waiting}
          />
        </>
      )}
    </>
  );
}
