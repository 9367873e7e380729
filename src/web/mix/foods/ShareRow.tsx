/** One food of the mix: its share as slider and number, the span it may move in, its grams, hold and details. */
import { memo, type ReactNode, type Ref, useRef, useState } from 'react';
import { Button, ToggleButton } from 'react-aria-components';
import type { Ingredient } from '../../../formulation/problem/problem.ts';
import type { CautionNote } from '../../../formulation/problem/result.ts';
import type { Span } from '../../../formulation/solve/mix-solver.ts';
import type { Mix } from '../../../household/model.ts';
import type { OutRule } from '../../../household/reckon/care/out-foods.ts';
import { hold, refuse, removeFood } from '../../../household/reckon/mix/mix-edits.ts';
import { words } from '../../../words/words.ts';
import { shownLater } from '../../shared/later/shown-later.tsx';
import { NumberInput } from '../../shared/NumberInput.tsx';
import { outWords } from '../animals/out-words.ts';
import { HoldIcon } from '../icons.tsx';
import type { MixActs } from '../useFormulation.ts';
import { AskNote, WantLine } from './AskNote.tsx';
import { MixCautions } from './MixCautions.tsx';
import { ShareSlider } from './ShareSlider.tsx';
import { useAsk } from './useAsk.ts';
import './ShareRow.css';

const FoodDetails = shownLater(() => import('./FoodDetails.tsx').then((m) => m.FoodDetails));

export interface ShareRowProps {
  food: Ingredient;
  name: string;
  /** As it is shown, percent. */
  share: number;
  span: Span | undefined;
  /** Share at the right end of the track, the same for every row. */
  top: number;
  /** Its grams, in words. */
  grams: string;
  /** Whether they are those for the scale. */
  exact: boolean;
  held: boolean;
  /** As it is kept, with what its animals bring: it stays the same while a slider moves. */
  mix: Mix;
  /** Whether the mix is the one nearest to all that is wanted. */
  best: boolean;
  /** Whether the mix breaks no rule. */
  fit: boolean;
  cautions: readonly CautionNote[];
  /** With what the keeper's own limits of the food collide, in words. */
  clash: string | undefined;
  acts: MixActs;
  /** Why it is out because of an animal; undefined where no animal keeps it out. */
  out: readonly OutRule[] | undefined;
  nameOf(id: string): string;
  /** Watches whether it can be seen. */
  watch: Ref<HTMLLIElement>;
}

/** Drawn anew only where something of this food changes: a dragged slider moves thirty of them. */
export const ShareRow = memo(function ShareRow(props: ShareRowProps) {
  const { food, name, share, span, top, held, mix, best, cautions, clash, acts, out } = props;
  const t = words().rows;
  const [open, setOpen] = useState(false);
  /** Where the keeper put the slider, until it is let go and the mix has followed. */
  const [dragged, setDragged] = useState<number>();
  /** The same while it is held, also where that is not drawn yet: what follows of it is asked for. */
  const put = useRef<number>(undefined);
  const ask = useAsk(food, mix, props.fit, acts);
  const reached = (wanted: number) => Math.min(span?.[1] ?? 100, Math.max(span?.[0] ?? 0, wanted));

  function ahead(wanted: number) {
    const to = reached(wanted);
    if (to === put.current) return;
    put.current = to;
    // Where other foods would be left with nothing the mix waits, and the slider stays where it was put. It is drawn at
    // once with what follows.
    void ask.drag(to).then(() => put.current !== undefined && setDragged(put.current));
  }
  function drag(wanted: number) {
    ahead(wanted);
    setDragged(reached(wanted));
  }
  function letGo(wanted: number) {
    const to = reached(wanted);
    put.current = undefined;
    setDragged(to);
    void ask.letGo(wanted).finally(() => setDragged((now) => (now === to ? undefined : now)));
  }

  if (cautions.some((c) => c.applied === 'blocked'))
    return (
      <Aside food={food} name={name} className="blocked">
        <span className="tag warn">{t.notFed}</span>
        <Button className="quiet-button" onPress={() => void acts.edit((m) => removeFood(m, food.id))}>
          {t.takeOut}
        </Button>
        <MixCautions food={food} notes={cautions} view={acts} />
      </Aside>
    );

  if (food.refused)
    return (
      <Aside food={food} name={name} className="refused">
        {out ? (
          <span className="tag">{outWords(out)}</span>
        ) : (
          <>
            <span className="tag">{t.refused}</span>
            <Button className="quiet-button" onPress={() => void acts.edit((m) => refuse(m, food.id, false))}>
              {t.offerAgain}
            </Button>
          </>
        )}
      </Aside>
    );

  return (
    <li
      ref={props.watch}
      className={`share-row ${held ? 'held' : ''}`}
      data-food={food.id}
      onKeyDown={(event) => {
        if (event.key === 'Escape') ask.leave();
      }}
    >
      <ShareSlider
        name={name}
        share={Math.min(top, dragged ?? share)}
        top={top}
        span={span}
        disabled={held}
        dragged={dragged !== undefined}
        onTake={acts.take}
        onDrag={drag}
        onAhead={ahead}
        onLetGo={letGo}
      >
        <span className="food-name">
          {name} {cautions.length > 0 && <span className="tag warn">{cautionWord(cautions)}</span>}
        </span>
      </ShareSlider>
      <NumberInput
        label={t.shareOf(name)}
        quiet
        required
        unit="%"
        decimals={1}
        min={0}
        max={100}
        value={ask.pending ?? share}
        disabled={held}
        onCommit={(v) => void ask.share(v ?? 0)}
      />
      <AskNote food={food} share={share} mix={mix} ask={ask} nameOf={props.nameOf} />
      <span className={`grams ${props.exact ? '' : 'about'}`}>{props.grams}</span>
      <Presses name={name} id={food.id} held={held} open={open} setOpen={setOpen} acts={acts} />
      {!held && <WantLine food={food} share={share} mix={mix} best={best} />}
      {clash && (
        <p className="clash">
          <span aria-hidden="true">✕</span> {clash}
        </p>
      )}
      {open && (
        <FoodDetails food={food} name={name} span={span} cautions={cautions} view={acts} patch={ask.patch} />
      )}
    </li>
  );
});

/** A food that has no share to move. */
function Aside(props: { food: Ingredient; name: string; className: string; children: ReactNode }) {
  return (
    <li className={`share-row ${props.className}`} data-food={props.food.id}>
      <span className="food-name">{props.name}</span>
      {props.children}
    </li>
  );
}

/** What of a row stays as it is while shares move. */
const Presses = memo(function Presses(props: {
  name: string;
  id: string;
  held: boolean;
  open: boolean;
  setOpen(open: boolean): void;
  acts: MixActs;
}) {
  const { name, id, held, open, setOpen, acts } = props;
  const t = words().rows;
  return (
    <>
      <ToggleButton
        className="icon-button hold"
        isSelected={held}
        onChange={(on) => void acts.edit((m) => hold(m, id, on))}
        aria-label={t.hold(name)}
      >
        <HoldIcon closed={held} />
      </ToggleButton>
      <Button
        className="icon-button more"
        aria-expanded={open}
        aria-label={t.more(name)}
        onPress={() => setOpen(!open)}
      >
        <span aria-hidden="true">{open ? '▴' : '▾'}</span>
      </Button>
    </>
  );
});

/** The strictest thing said of a food, in two words. */
function cautionWord(cautions: readonly CautionNote[]): string {
  const t = words().rows.tags;
  const limits = cautions.filter((c) => c.applied === 'capped').map((c) => c.max_share ?? 0);
  if (limits.length > 0) return t.limit(Math.min(...limits));
  return cautions.some((c) => c.applied === 'overridden') ? t.lifted : t.caution;
}
