/** The food to pour now: how much, between which amounts, and what the scale shows. */
import { type ReactNode, useEffect, useId, useRef, useState } from 'react';
import type { NextPour } from '../../kitchen/weighing/weigh-state.ts';
import { words } from '../../words/words.ts';
import { deviceStorage } from '../shared/device-storage.ts';
import { readNumber } from '../shared/NumberInput.tsx';
import { Button } from '../shared/plain/Button.tsx';
import { TextInput } from '../shared/plain/TextInput.tsx';
import { OtherWays } from './OtherWays.tsx';
import {
  gramsOf,
  type ScaleReads,
  scaleStepShown,
  shownTarget,
  toleranceWords,
  typedGrams,
} from './view-model.ts';
import './pour-step.css';

const READS = 'pouchful.scale';
/** A second tap of the same finger on a key that now stands for the next food is none, ms. */
const DOUBLE_TAP_MS = 500;

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
  /** Whether the step before it was poured on this page, by a key that stood where its own stand. */
  follows: boolean;
  /** Whether the field takes the focus. */
  focus: boolean;
  children: ReactNode;
}) {
  const { next, planned, step, busy, onPour, focus } = props;
  const t = words().weighing;
  const f = words().figures;
  const id = useId();
  const [reads, setReads] = useState<ScaleReads>(() =>
    deviceStorage.getItem(READS) === 'bowl' ? 'bowl' : 'food',
  );
  const [text, setText] = useState('');
  const [fault, setFault] = useState('');
  const input = useRef<HTMLInputElement>(null);
  const settled = useSettled(props.follows);
  useEffect(() => {
    if (focus) input.current?.focus();
  }, [focus]);
  const target = shownTarget(next, reads);
  const typed = typedGrams(readNumber(text), target);

  function poured(noMore = false) {
    if (busy) return;
    const read = gramsOf(typed, next.poured, reads);
    if ('fault' in read) {
      setFault(noMore && typed === undefined ? t.reading.missingNoMore : read.fault);
      input.current?.focus();
      return;
    }
    setFault('');
    onPour(read.grams, noMore);
  }
  function stepBy(by: 1 | -1) {
    const from = readNumber(text) ?? f.mass(target);
    if (!Number.isFinite(from)) return;
    const [size, places] = scaleStepShown(step);
    write(f.number(Math.max(0, from + by * size), places));
  }
  function write(value: string) {
    setText(value);
    setFault('');
    props.onTyping(value.trim() !== '');
  }
  const key = (by: 1 | -1) => (
    <Button
      className="weigh-step-key"
      aria-label={by > 0 ? t.step.oneMore(step) : t.step.oneLess(step)}
      onPress={() => stepBy(by)}
    >
      <span aria-hidden="true">{by > 0 ? '+' : '−'}</span>
    </Button>
  );

  return (
    <section className="weigh-step" aria-labelledby="weigh-food">
      <p className="weigh-kicker">
        {props.instead ? t.step.instead(props.asked) : next.again ? t.step.more : t.step.now}
      </p>
      <h2 id="weigh-food" tabIndex={-1}>
        {next.name}
      </h2>
      <p className="weigh-target" id={`${id}-target`} data-testid="target">
        {f.fixed(f.mass(target), scaleStepShown(step)[1])} <span>{f.massUnit}</span>
      </p>
      <p className="weigh-tolerance" data-testid="tolerance">
        {props.instead
          ? t.step.insteadHelp
          : props.outOfRange
            ? t.step.outHelp
            : toleranceWords(next, reads, planned)}
        {reads === 'bowl' && <small className="weigh-also">{t.step.ofIt(next.target)}</small>}
      </p>
      {text.trim() === '' ? (
        <Button
          className="big-button weigh-poured"
          isDisabled={busy || !settled || !(next.target > 0)}
          onPress={() => onPour(next.target)}
        >
          {t.step.right(target)}
        </Button>
      ) : (
        <Button className="big-button weigh-poured" isDisabled={busy} onPress={() => poured()}>
          {typed !== undefined && Number.isFinite(typed) ? t.step.pouredGrams(typed) : t.step.poured}
        </Button>
      )}
      <TextInput
        className="weigh-reading"
        label={t.step.reading}
        value={text}
        onChange={write}
        inputMode="decimal"
        fault={fault}
        about={`weigh-food ${id}-target`}
        input={input}
        onKeyDown={(e) => {
          if (e.key === 'Enter') poured();
          if (e.key === 'ArrowUp' || e.key === 'ArrowDown') {
            e.preventDefault();
            stepBy(e.key === 'ArrowUp' ? 1 : -1);
          }
        }}
        around={(field) => (
          <span className="weigh-keys">
            {key(-1)}
            {field}
            {key(1)}
          </span>
        )}
        // The line keeps its room while it is empty: nothing moves under a finger when it comes or goes.
        below={(wrong) => <span className="weigh-reading-fault">{wrong}</span>}
      />
      {props.children}
      <OtherWays
        next={next}
        busy={busy}
        instead={props.instead}
        asked={props.asked}
        others={props.others}
        onChoose={props.onChoose}
        onNoMore={() => poured(true)}
        onLeaveOut={() => onPour(0)}
        reads={reads}
        onReads={(value) => {
          deviceStorage.setItem(READS, value);
          setReads(value);
          setFault('');
        }}
      />
    </section>
  );
}

/** Whether a tap on a key is meant for what it stands for now. @param waits whether a key stood there before it */
function useSettled(waits: boolean): boolean {
  const [settled, set] = useState(!waits);
  useEffect(() => {
    if (settled) return;
    const timer = setTimeout(() => set(true), DOUBLE_TAP_MS);
    return () => clearTimeout(timer);
  }, [settled]);
  return settled;
}
