/** One more source for a food: its label, or a row of the reference tables. */
import { useState } from 'react';
import { Button, Form, Input, Label, SearchField, TextField } from 'react-aria-components';
import { tableNote } from '../../foods/food-name.ts';
import { sourceWords } from '../../foods/source-words.ts';
import type { FoodSource } from '../../foods/sources/source.ts';
import type { OwnFood } from '../../household/model.ts';
import { sourceFromReference } from '../../household/reckon/foods/own-food.ts';
import { words } from '../../words/words.ts';
import { Choice } from '../shared/Choice.tsx';
import { NumberInput } from '../shared/NumberInput.tsx';
import { NameInput } from '../shared/typing/NameInput.tsx';
import { newId } from '../store/new-id.ts';
import { useFoodSearch } from '../worker/engine.ts';
import { FigureForm, type FigureResult } from './FigureForm.tsx';
import '../shared/styles/offers.css';

interface Props {
  own: OwnFood;
  /** Called with the new source, or undefined when nothing is to be added. */
  onDone(source: FoodSource | undefined): void;
}

export function AddSource({ own, onDone }: Props) {
  const [from, setFrom] = useState<'label' | 'table'>('label');
  const t = words().foods.sources;
  return (
    <section className="add-source" aria-label={t.add}>
      <div className="fields">
        <Choice
          label={t.is}
          value={from}
          options={[
            ['label', t.isLabel],
            ['table', t.isTable],
          ]}
          onChange={setFrom}
        />
      </div>
      {from === 'label' ? <FromLabel own={own} onDone={onDone} /> : <FromTable own={own} onDone={onDone} />}
    </section>
  );
}

function FromLabel({ own, onDone }: Props) {
  const [name, setName] = useState('');
  const [samples, setSamples] = useState<number>();
  const [date, setDate] = useState('');
  const [result, setResult] = useState<FigureResult>();
  const [tried, setTried] = useState(false);
  const { foods, common } = words();
  const t = foods.sources;
  const fault = name.trim() === '' ? t.nameless : !result || empty(result) ? t.noAmount : result.faults[0];

  return (
    <Form
      onSubmit={(e) => {
        e.preventDefault();
        setTried(true);
        if (fault !== undefined || !result) return;
        const { figures, basis, printed } = result;
        onDone({
          id: newId(),
          name: name.trim(),
          ...(date && { date }),
          ...(samples && { n: samples }),
          basis,
          ...figures,
          ...(printed && { printed }),
        });
      }}
    >
      <div className="fields">
        <TextField className="wide" value={name} onChange={setName}>
          <Label>{t.name}</Label>
          <NameInput placeholder={t.nameExample} />
        </TextField>
        <TextField value={date} onChange={setDate} type="date">
          <Label>{t.date}</Label>
          <Input />
        </TextField>
        <NumberInput
          label={t.samplesKnown}
          min={1}
          max={100_000}
          step={1}
          decimals={0}
          value={samples}
          onCommit={(n) => setSamples(n === undefined ? undefined : Math.round(n))}
        />
      </div>
      <FigureForm about={{ name: own.name, group: own.group, kind: own.kind }} onChange={setResult} />
      {tried && fault && (
        <p role="alert" className="field-error">
          {fault}
        </p>
      )}
      <div className="button-row">
        <Button type="submit" className="button strong">
          {t.addThis}
        </Button>
        <Button className="quiet-button" onPress={() => onDone(undefined)}>
          {common.cancel}
        </Button>
      </div>
    </Form>
  );
}

function empty({ figures }: FigureResult): boolean {
  return [figures.composition, figures.low, figures.high].every((a) => Object.keys(a ?? {}).length === 0);
}

function FromTable({ own, onDone }: Props) {
  const [query, setQuery] = useState(own.name);
  const { foods, common } = words();
  const t = foods.sources;
  const { data: found = [] } = useFoodSearch(query, 12);
  const there = new Set(own.evidence?.sources?.flatMap((s) => s.ref ?? []));
  return (
    <>
      <SearchField value={query} onChange={setQuery} className="search">
        <Label>{t.searchTables}</Label>
        <Input />
      </SearchField>
      <ul className="offers">
        {found.map((f) => (
          <li key={f.ref}>
            <span className="offer-name">
              {f.name} <small>{[tableNote(f), sourceWords(f.source)].filter(Boolean).join(' · ')}</small>
            </span>
            <Button
              className="button small"
              isDisabled={there.has(f.ref)}
              aria-label={t.addOf(f.name, f.source)}
              onPress={() => onDone(sourceFromReference(f, newId()))}
            >
              {there.has(f.ref) ? t.isSource : common.add}
            </Button>
          </li>
        ))}
      </ul>
      <Button className="quiet-button" onPress={() => onDone(undefined)}>
        {common.cancel}
      </Button>
    </>
  );
}
