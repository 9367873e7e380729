/**
 * The slider of a share: a native range for keys and screen readers, which the hand need not hit, on a track of our own with
 * the span beneath. Thirty of them follow each move of one, so there is nothing in it that does not move.
 */
import {
  type KeyboardEvent,
  type PointerEvent,
  type ReactNode,
  useEffect,
  useEffectEvent,
  useRef,
} from 'react';
import type { Span } from '../../../formulation/solve/mix-solver.ts';
import { words } from '../../../words/words.ts';

/** Percent of the mix, and how many of them make one percent. */
const STEP = 0.1;
const STEPS = 10;
/** Half a frame, ms: a quick mouse tells of more moves than can be shown, and no hand keeps the beat of the screen. */
const HALF_FRAME_MS = 8;

interface Props {
  /** Name of the food. */
  name: string;
  /** Percent of the mix, as the other numbers here. */
  share: number;
  /** At the right end of the track. */
  top: number;
  span: Span | undefined;
  disabled: boolean;
  /** Whether the hand has it. */
  dragged: boolean;
  /** The hand takes hold of it. */
  onTake(): void;
  /** The hand, or a key, has moved it. */
  onDrag(share: number): void;
  /** The hand has moved it, and will have the browser draw it: what follows can be asked for already. */
  onAhead(share: number): void;
  /** It is let go. @param share where it was moved to last */
  onLetGo(share: number): void;
  /** What stands before the track. */
  children: ReactNode;
}

/** Where a pointer took hold of the slider, and where it has brought it. */
interface Grip {
  readonly pointer: number;
  readonly x: number;
  readonly share: number;
  readonly width: number;
  at: number;
  /** Whether it was brought there ahead of the browser's drawing. */
  ahead: boolean;
  /** When it was moved last, on the clock of the events. */
  moved: number;
}

export function ShareSlider(props: Props) {
  const { name, share, top, span, disabled, dragged, onDrag, onLetGo } = props;
  const t = words().rows;
  const range = useRef<HTMLInputElement>(null);
  const track = useRef<HTMLDivElement>(null);
  const grip = useRef<Grip>(undefined);
  /** Where keys that are still down have brought it. */
  const keyed = useRef<number>(undefined);
  const keyDown = useRef(false);
  // To a tenth of a percent of the track, which is less than can be seen: what stays is not laid out anew.
  const at = (v: number) => `${Math.min(100, Math.max(0, Math.round((1000 * v) / top) / 10))}%`;
  const rounded = (v: number) => Math.min(top, Math.max(0, Math.round(v * STEPS) / STEPS));

  function press(event: PointerEvent<HTMLDivElement>) {
    if (disabled || grip.current || event.button !== 0) return;
    // The keyboard goes on where the hand left it; the browser would take it to where was pressed.
    event.preventDefault();
    range.current?.focus({ preventScroll: true });
    event.currentTarget.setPointerCapture(event.pointerId);
    const { left, width } = event.currentTarget.getBoundingClientRect();
    const onThumb = event.target instanceof Element && event.target.closest('.thumb') !== null;
    const from = onThumb ? share : rounded(((event.clientX - left) / width) * top);
    grip.current = {
      pointer: event.pointerId,
      x: event.clientX,
      share: from,
      width,
      at: from,
      ahead: false,
      moved: 0,
    };
    props.onTake();
    if (!onThumb) onDrag(from);
  }
  /** Where a pointer has brought it; undefined where that is not the one that holds it. */
  function brought({ pointerId, clientX }: Pick<PointerEvent, 'pointerId' | 'clientX'>): Grip | undefined {
    const held = grip.current;
    if (held?.pointer !== pointerId) return undefined;
    held.at = rounded(held.share + ((clientX - held.x) / held.width) * top);
    return held;
  }
  function move(event: PointerEvent) {
    const { at } = grip.current ?? {};
    const held = brought(event);
    if (!held || (held.at === at && !held.ahead)) return;
    held.ahead = false;
    held.moved = event.timeStamp;
    onDrag(held.at);
  }
  /** Browsers keep moves back until they draw; by then the answer to one that is not kept back can be there. */
  const early = useEffectEvent((event: Event) => {
    if (!(event instanceof globalThis.PointerEvent) || !grip.current) return;
    const { at, moved } = grip.current;
    if (event.timeStamp - moved < HALF_FRAME_MS) return;
    const held = brought(event);
    if (!held || held.at === at) return;
    held.ahead = true;
    held.moved = event.timeStamp;
    props.onAhead(held.at);
  });
  useEffect(() => {
    if (!dragged) return;
    const element = track.current;
    element?.addEventListener('pointerrawupdate', early);
    return () => element?.removeEventListener('pointerrawupdate', early);
  }, [dragged]);
  function release(event: PointerEvent) {
    const held = grip.current;
    if (held?.pointer !== event.pointerId) return;
    grip.current = undefined;
    onLetGo(held.at);
  }
  function keys(event: KeyboardEvent) {
    keyDown.current = event.type === 'keydown';
    if (!keyDown.current) lift();
  }
  /** Keys are lifted, or go elsewhere. */
  function lift() {
    keyDown.current = false;
    if (keyed.current === undefined) return;
    const to = keyed.current;
    keyed.current = undefined;
    onLetGo(to);
  }

  return (
    <div className="share-slider">
      {props.children}
      {/* The keyboard has the range within; this is for the hand. */}
      <div
        ref={track}
        className="track"
        onPointerDown={press}
        onPointerMove={move}
        onPointerUp={release}
        onPointerCancel={release}
        onLostPointerCapture={release}
      >
        <span className="rail" />
        {span && (
          <span
            className="span"
            style={{ left: at(span[0]), right: `calc(100% - ${at(Math.max(span[1], span[0]))})` }}
            title={t.mayStand(span[0], span[1])}
          />
        )}
        <span className="thumb" style={{ left: at(share) }} data-dragging={dragged || undefined}>
          <input
            ref={range}
            type="range"
            min={0}
            max={top}
            step={STEP}
            value={rounded(share)}
            disabled={disabled}
            aria-label={t.shareInPercent(name)}
            aria-valuetext={words().figures.percent(share, 1)}
            onChange={(event) => {
              const to = Number(event.currentTarget.value);
              onDrag(to);
              keyed.current = to;
              // A screen reader moves it without a key.
              if (!keyDown.current) lift();
            }}
            onKeyDown={keys}
            onKeyUp={keys}
            onBlur={lift}
          />
        </span>
      </div>
    </div>
  );
}
