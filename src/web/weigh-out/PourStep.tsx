/** The food to pour now: how much, between which amounts, and what the scale shows. */

import { type ReactNode, useEffect, useRef, useState } from 'react';
import { Button, FieldError, Input, Label, TextField } from 'react-aria-components';
import type { NextPour } from '../../kitchen/weighing/weigh-state.ts';
import { Choice } from '../shared/Choice.tsx';
import { deviceStorage } from '../shared/device-storage.ts';
import { readNumber } from '../shared/NumberInput.tsx';
import { Radios } from '../shared/Radios.tsx';
import { gramWords } from '../shared/words/gram-words.ts';
import { gramsOf, type ScaleReads, shownTarget, toleranceWords } from './view-model.ts';
import './pour-step.css';
import { decimalsOf } from '../../kitchen/rounding.ts';

const READS = 'pouchful.scale';
const OPTIONS: readonly (readonly [ScaleReads, string])[] = [
  ['food', 'this food alone (set to zero first)'],
  ['bowl', 'all in the bowl'],
];

/** Stands for a food that is none of the batch's. */
const STRANGER = ' ';

export function PourStep(props: {
  next: NextPour;
  /** g of the batch as planned. */
  planned: number;
  /** g that the scale can tell apart. */
  step: number;
  outOfRange: boolean;
  busy: boolean;
  /** With the grams of this food; 0 leaves it out. `noMore`: there is no more of it than that. */
  onPour(grams: number, noMore?: boolean): void;
  /** Whether the keeper chose this food in place of the one asked for, and the name of that. */
  instead: boolean;
  asked: string | undefined;
  /** Foods that may be poured in its place, with words for each. */
  others: readonly (readonly [id: string, words: string])[];
  /** Whether a weight stands in the field that was not poured yet. */
  onTyping(something: boolean): void;
  /** Undefined for the food asked for. */
  onChoose(food: string | undefined): void;
  /** Whether the name of the food takes the focus. */
  focus: boolean;
  children: ReactNode;
}) {
  const { next, planned, step, busy, onPour } = props;
  const [reads, setReads] = useState<ScaleReads>(() =>
    deviceStorage.getItem(READS) === 'bowl' ? 'bowl' : 'food',
  );
  const [text, setText] = useState('');
  const [fault, setFault] = useState('');
  const [leaving, setLeaving] = useState(false);
  const heading = useRef<HTMLHeadingElement>(null);
  const { focus } = props;
  useEffect(() => {
    if (focus) heading.current?.focus();
  }, [focus]);
  /** Whether a food went in that the mix does not name. */
  const [stranger, setStranger] = useState(false);
  const input = useRef<HTMLInputElement>(null);
  const places = decimalsOf(step);

  function poured(noMore = false) {
    if (busy) return;
    const read = gramsOf(readNumber(text), next.poured, reads);
    if ('fault' in read) {
      setFault(
        noMore && readNumber(text) === undefined
          ? 'Write first what the scale shows of it, in g. Nothing at all? Press “Leave it out”.'
          : read.fault,
      );
      input.current?.focus();
      return;
    }
    setFault('');
    onPour(read.grams, noMore);
  }
  function stepBy(by: number) {
    const from = readNumber(text) ?? (by > 0 ? 0 : shownTarget(next, reads));
    if (!Number.isFinite(from)) return;
    write(String(Number(Math.max(0, from + by).toFixed(places))));
  }
  function write(value: string) {
    setText(value);
    props.onTyping(value.trim() !== '');
  }

  return (
    <section className="weigh-step" aria-labelledby="weigh-food">
      <p className="weigh-kicker">
        {props.instead ? `Instead of ${props.asked ?? 'ending here'}` : next.again ? 'More of' : 'Now'}
      </p>
      <h2 id="weigh-food" ref={heading} tabIndex={-1}>
        {next.name}
      </h2>
      <p className="weigh-target" data-testid="target">
        {shownTarget(next, reads).toFixed(places)} <span>g</span>
      </p>
      {reads === 'bowl' && (
        <p className="weigh-also">on the scale, {gramWords(next.target)} of it this food</p>
      )}
      <p className="weigh-tolerance" data-testid="tolerance">
        {props.instead
          ? 'Pour what you will; the others follow. Poured already? Write what went in.'
          : props.outOfRange
            ? 'The nearest that can be done; the batch stays out of range.'
            : toleranceWords(next, reads, planned)}
      </p>
      {props.children}
      <TextField
        className="weigh-reading"
        value={text}
        onChange={(value) => {
          write(value);
          setFault('');
        }}
        isInvalid={fault !== ''}
        validationBehavior="aria"
        onKeyDown={(e) => {
          if (e.key === 'Enter') poured();
          if (e.key === 'ArrowUp' || e.key === 'ArrowDown') {
            e.preventDefault();
            stepBy(e.key === 'ArrowUp' ? step : -step);
          }
        }}
      >
        <Label>The scale shows, in g</Label>
        <Input ref={input} inputMode="decimal" autoComplete="off" />
        <FieldError className="field-error">{fault}</FieldError>
      </TextField>
      <Button className="big-button weigh-poured" isDisabled={busy} onPress={() => poured()}>
        Poured
      </Button>
      <div className="weigh-ways">
        <Button className="button" isDisabled={busy} onPress={() => poured(true)}>
          There is no more of it
        </Button>
        {props.instead ? (
          <Button className="button" onPress={() => props.onChoose(undefined)}>
            Back to {props.asked ?? 'the end'}
          </Button>
        ) : (
          <Button
            className="button"
            isDisabled={busy}
            onPress={() => (leaving ? onPour(0) : setLeaving(true))}
          >
            {leaving ? `Yes, do without ${next.again ? 'more of ' : ''}${next.name}` : 'Leave it out'}
          </Button>
        )}
      </div>
      {leaving && <p role="status">The others then make up for it, as far as they can.</p>}
      {!props.instead && (
        <Choice<string>
          label="Another food went in, or goes first"
          value={stranger ? STRANGER : ''}
          options={[
            ['', 'Choose it here'] as const,
            ...props.others,
            [STRANGER, 'A food that is not in this mix'] as const,
          ]}
          onChange={(food) => {
            setStranger(food === STRANGER);
            if (food !== '' && food !== STRANGER) props.onChoose(food);
          }}
        />
      )}
      {stranger && (
        <p role="status" className="weigh-warn">
          <span aria-hidden="true">!</span> Take it out again, all of it, and go on. What the mix does not
          know cannot be worked out: if some of it stays in, give up this batch below and start anew.
        </p>
      )}
      <Radios
        label="What the scale shows"
        value={reads}
        options={OPTIONS}
        onChange={(value) => {
          deviceStorage.setItem(READS, value);
          setReads(value);
          setFault('');
        }}
      />
    </section>
  );
}
