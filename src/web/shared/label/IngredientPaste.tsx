/** A printed list of ingredients, and what of it stands on our lists: additives, sugars, fillers, cautions. */
import { Fragment, useMemo } from 'react';
import { Label, Text, TextArea, TextField } from 'react-aria-components';
import { readIngredients } from '../../../foods/ingredients/read-ingredients.ts';
import { sourceWords } from '../../../foods/source-words.ts';
import { words } from '../../../words/words.ts';
import { useSettled } from '../hooks/settled.ts';
import { markedText } from './marked-text.ts';
import './label.css';

/** Most characters of a list of ingredients that the store keeps. */
export const MOST_INGREDIENT_TEXT = 4000;

interface Props {
  text: string;
  onChange(text: string): void;
  species?: string;
}

export function IngredientPaste({ text, onChange, species }: Props) {
  const [settled] = useSettled(text, 200);
  const tooLong = text.length > MOST_INGREDIENT_TEXT;
  const t = words().label.ingredients;
  return (
    <section className="ingredient-paste" aria-label={t.section}>
      <TextField
        className="wide"
        value={text}
        onChange={onChange}
        isInvalid={tooLong}
        validationBehavior="aria"
      >
        <Label>{t.label}</Label>
        <TextArea rows={4} spellCheck={false} autoComplete="off" autoCapitalize="off" />
        <Text slot="description" className="hint">
          {t.hint}
        </Text>
      </TextField>
      {tooLong && (
        <p role="alert" className="field-error">
          {t.tooLong(text.length, MOST_INGREDIENT_TEXT)}
        </p>
      )}
      {settled.trim() !== '' && <IngredientReading text={settled} species={species} />}
    </section>
  );
}

/** A list of ingredients with the words marked that stand on our lists, and what each of them means. */
export function IngredientReading({ text, species }: { text: string; species?: string }) {
  const { flags, unread } = useMemo(() => readIngredients(text, species), [text, species]);
  const t = words().label.ingredients;
  return (
    <div className="ingredient-reading">
      <p className="ingredient-text">
        {markedText(text, flags).map((piece, at) => {
          const numbers = piece.ends.map((i) => i + 1).join(', ');
          return (
            // biome-ignore lint/suspicious/noArrayIndexKey: a piece has no name but its place
            <Fragment key={at}>
              {piece.marked ? <mark>{piece.text}</mark> : piece.text}
              {numbers && <sup>{numbers}</sup>}
            </Fragment>
          );
        })}
      </p>
      <p role="status" className="hint">
        {flags.length === 0 ? t.none : t.found(flags.length)}
      </p>
      {flags.length > 0 && (
        <ol className="flags" aria-label={t.list}>
          {flags.map((flag, i) => (
            <li key={`${flag.start} ${flag.kind} ${flag.name}`} className={flag.severity}>
              <span className="flag-number">{i + 1}</span>
              <div>
                <p>
                  <strong>{t[flag.severity](flag.name)}</strong> <q>{flag.found}</q>{' '}
                  <span className="tag">{t.kinds[flag.kind]}</span>
                </p>
                <p>{flag.why}</p>
                <p className="hint">{t.source(sourceWords(flag.source))}</p>
              </div>
            </li>
          ))}
        </ol>
      )}
      {unread.length > 0 && <p className="hint">{t.unread(unread)}</p>}
    </div>
  );
}
