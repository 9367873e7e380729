/** A label pasted or typed as printed, what was understood of it line by line, and what it comes to. */
import { Label, Text, TextArea, TextField } from 'react-aria-components';
import type { Tag } from '../../../nutrition/nutrients.ts';
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
        <Label>The label, as printed</Label>
        <TextArea rows={7} spellCheck={false} autoComplete="off" autoCapitalize="off" />
        <Text slot="description" className="hint">
          For example, line by line: “Crude protein min. 14 %”, “Rohfett 4,2 %”, “Fibre 3.1 g per 40 g
          serving”. English, German, French, Dutch or Spanish.
        </Text>
      </TextField>
      {text.trim() !== '' && (
        <>
          {asSaved && (
            <p className="notice-line" role="status">
              These figures are as you saved them; they rest on answers or changes that the text alone does
              not give. Change the text or answer a question to read the label anew.
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
