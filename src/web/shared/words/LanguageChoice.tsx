/** The languages by their own names, to be pressed: the page is drawn anew in the one chosen. */
import { Button } from 'react-aria-components';
import { LANGUAGE_NAMES, LANGUAGES } from '../../../words/manner.ts';
import { words } from '../../../words/words.ts';
import { chooseManner } from './manner.ts';
import './language-choice.css';

export function LanguageChoice() {
  const { figures, keeping } = words();
  const { manner } = figures;
  return (
    <fieldset className="language-choice">
      <legend className="sr-only">{keeping.language.language}</legend>
      {LANGUAGES.map((language) => (
        <Button
          key={language}
          className="quiet-button"
          lang={language}
          aria-pressed={language === manner.language}
          onPress={() => {
            if (language !== manner.language) chooseManner({ ...manner, language });
          }}
        >
          {LANGUAGE_NAMES[language]}
        </Button>
      ))}
    </fieldset>
  );
}
