/** Language, units and currency of this device; the page is drawn anew in them. */
import { type FormEvent, useState } from 'react';
import { Button, Form } from 'react-aria-components';
import { figuresOf } from '../../words/figures.ts';
import { CURRENCIES, LANGUAGE_NAMES, LANGUAGES, type Manner } from '../../words/manner.ts';
import { words } from '../../words/words.ts';
import { Choice } from '../shared/Choice.tsx';
import { Radios } from '../shared/Radios.tsx';
import { today } from '../shared/today.ts';
import { chooseManner } from '../shared/words/manner.ts';

/** What the example shows: a food, a fan oven, a pack. */
const EXAMPLE = { grams: 21.5, celsius: 60, price: 4.2 };

export function LanguageAndUnits() {
  const { figures, keeping } = words();
  const [manner, setManner] = useState<Manner>(figures.manner);
  const t = keeping.language;
  const f = figuresOf(manner);
  const change = (fields: Partial<Manner>) => setManner({ ...manner, ...fields });

  function submit(event: FormEvent) {
    event.preventDefault();
    chooseManner(manner);
  }

  return (
    <section className="panel" aria-labelledby="language-heading">
      <h2 id="language-heading">{t.title}</h2>
      <p className="hint">{t.ofThisDevice}</p>
      <Form className="manner" onSubmit={submit}>
        <Radios
          label={t.language}
          value={manner.language}
          options={LANGUAGES.map((language) => [language, LANGUAGE_NAMES[language]] as const)}
          onChange={(language) => change({ language })}
        />
        <Radios
          label={t.weights}
          value={manner.mass}
          options={[
            ['g', t.grams],
            ['oz', t.ounces],
          ]}
          onChange={(mass) => change({ mass })}
        />
        <Radios
          label={t.heat}
          value={manner.heat}
          options={[
            ['C', t.celsius],
            ['F', t.fahrenheit],
          ]}
          onChange={(heat) => change({ heat })}
        />
        <Choice
          label={t.currency}
          value={manner.currency}
          options={CURRENCIES.map((currency) => [currency, t.currencies[currency]] as const)}
          onChange={(currency) => change({ currency })}
        />
        <p className="hint" role="status">
          {t.example(
            [
              f.grams(EXAMPLE.grams),
              f.degrees(EXAMPLE.celsius),
              f.money(EXAMPLE.price),
              f.shortDay(today()),
            ].join(' · '),
          )}
        </p>
        <p className="hint">{t.prices}</p>
        <div className="button-row">
          <Button type="submit" className="button strong">
            {t.save}
          </Button>
        </div>
      </Form>
    </section>
  );
}
