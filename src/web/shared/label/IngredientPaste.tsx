/** A printed list of ingredients, and what of it stands on our lists: additives, sugars, fillers, cautions. */
import { Fragment, useMemo } from 'react';
import { Label, Text, TextArea, TextField } from 'react-aria-components';
import { type Flag, readIngredients } from '../../../foods/ingredients/read-ingredients.ts';
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
  return (
    <section className="ingredient-paste" aria-label="Ingredients">
      <TextField
        className="wide"
        value={text}
        onChange={onChange}
        isInvalid={tooLong}
        validationBehavior="aria"
      >
        <Label>Ingredient list, as printed (optional)</Label>
        <TextArea rows={4} spellCheck={false} autoComplete="off" autoCapitalize="off" />
        <Text slot="description" className="hint">
          For example “rolled oats, peas, dried carrot, minerals”. It is kept with the food and read for what
          to avoid.
        </Text>
      </TextField>
      {tooLong && (
        <p role="alert" className="field-error">
          The list is {text.length} characters long and {MOST_INGREDIENT_TEXT} can be kept; leave out what is
          no ingredient.
        </p>
      )}
      {settled.trim() !== '' && <IngredientReading text={settled} species={species} />}
    </section>
  );
}

const SEVERITY: Readonly<Record<Flag['severity'], string>> = { avoid: 'Avoid', mind: 'Good to know' };
const KIND: Readonly<Record<Flag['kind'], string>> = {
  'added sugar': 'added sugar',
  dye: 'dye',
  preservative: 'preservative',
  filler: 'filler',
  unspecified: 'says too little',
  caution: 'caution list',
};

/** A list of ingredients with the words marked that stand on our lists, and what each of them means. */
export function IngredientReading({ text, species }: { text: string; species?: string }) {
  const { flags, unread } = useMemo(() => readIngredients(text, species), [text, species]);
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
        {flags.length === 0
          ? 'Nothing on our lists was found; that is no guarantee.'
          : `${flags.length} found on our lists:`}
      </p>
      {flags.length > 0 && (
        <ol className="flags" aria-label="Found in the ingredients">
          {flags.map((flag, i) => (
            <li key={`${flag.start} ${flag.kind} ${flag.name}`} className={flag.severity}>
              <span className="flag-number">{i + 1}</span>
              <div>
                <p>
                  <strong>
                    {SEVERITY[flag.severity]}: {flag.name}
                  </strong>{' '}
                  <q>{flag.found}</q> <span className="tag">{KIND[flag.kind]}</span>
                </p>
                <p>{flag.why}</p>
                <p className="hint">Source: {flag.source}</p>
              </div>
            </li>
          ))}
        </ol>
      )}
      {unread.length > 0 && <p className="hint">Not understood, so not looked up: {unread.join(', ')}.</p>}
    </div>
  );
}
