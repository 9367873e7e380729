/** The wishes in their order: what each came to, how far it may give way, up, down and out. */
import { Button } from 'react-aria-components';
import type { Aim } from '../../../../formulation/problem/problem.ts';
import { aimKey, giveOf, moveAim, removeAim } from '../../../../household/reckon/mix/wishes.ts';
import { words } from '../../../../words/words.ts';
import { focusWhenThere } from '../../../shared/focus.ts';
import { NumberInput } from '../../../shared/NumberInput.tsx';
import type { AdviceProps } from '../advice-props.ts';
import { aimLacks, aimUnit, aimWords, valueWords } from './wish-words.ts';

type Props = AdviceProps & { say(notice: string): void };

export function WishList(props: Props) {
  const { mix, view, nameOf, say } = props;
  const t = words().wishes;
  const aims = mix.problem.aims ?? [];
  if (aims.length === 0) return <p>{t.none}</p>;

  function move(aim: Aim, rank: number, by: -1 | 1) {
    const key = aimKey(aim);
    const to = rank + by;
    void view.edit((m) => moveAim(m, key, by));
    say(t.list.moved(aimWords(aim, nameOf), to + 1, aims.length));
    // The moved row is set anew into the page; at the end of the list the other button takes the keyboard.
    const end = by < 0 ? to === 0 : to === aims.length - 1;
    const button = by < 0 !== end ? 'up' : 'down';
    requestAnimationFrame(() => focusWhenThere(`[data-wish="${CSS.escape(key)}"] .wish-${button}`));
  }
  function remove(aim: Aim, rank: number) {
    void view.edit((m) => removeAim(m, aimKey(aim)));
    say(t.list.removed(aimWords(aim, nameOf)));
    const next = aims[rank + 1] ?? aims[rank - 1];
    requestAnimationFrame(() =>
      next
        ? focusWhenThere(`[data-wish="${CSS.escape(aimKey(next))}"] .wish-remove`)
        : focusWhenThere('.wish-form select'),
    );
  }

  return (
    <>
      <ol className="wish-list">
        {aims.map((aim, rank) => (
          <Row
            key={aimKey(aim)}
            {...props}
            aim={aim}
            rank={rank}
            of={aims.length}
            move={(by) => move(aim, rank, by)}
            remove={() => remove(aim, rank)}
          />
        ))}
      </ol>
      <p className="hint">{t.list.hint}</p>
    </>
  );
}

interface RowProps extends AdviceProps {
  aim: Aim;
  rank: number;
  of: number;
  move(by: -1 | 1): void;
  remove(): void;
}

function Row({ mix, view, nameOf, aim, rank, of, move, remove }: RowProps) {
  const key = aimKey(aim);
  const t = words().wishes;
  const wish = aimWords(aim, nameOf);
  const lacks = aimLacks(mix.problem, aim, nameOf);
  const reached = view.best?.aims?.find((a) => aimKey(a) === key)?.value;
  const came =
    reached !== undefined
      ? t.list.came(valueWords(aim, reached))
      : view.state === 'fault' || view.collision
        ? t.list.noMix
        : t.working;
  return (
    <li className="wish" data-wish={key}>
      <fieldset>
        <legend>
          <span className="wish-rank">{t.list.rank(rank + 1)}</span> {wish}
        </legend>
        <p className="wish-value">{came}</p>
        {lacks && <p className="wish-lacks">{lacks}</p>}
        <div className="wish-deeds">
          <NumberInput
            label={t.list.give}
            unit={aimUnit(aim)}
            min={0}
            value={aim.give}
            placeholder="0"
            onCommit={(give) => void view.edit((m) => giveOf(m, key, give))}
          />
          <span className="button-row">
            <Button
              className="icon-button wish-up"
              isDisabled={rank === 0}
              aria-label={t.list.up(wish)}
              onPress={() => move(-1)}
            >
              <span aria-hidden="true">▲</span>
            </Button>
            <Button
              className="icon-button wish-down"
              isDisabled={rank === of - 1}
              aria-label={t.list.down(wish)}
              onPress={() => move(1)}
            >
              <span aria-hidden="true">▼</span>
            </Button>
            <Button
              className="quiet-button small wish-remove"
              aria-label={t.list.remove(wish)}
              onPress={remove}
            >
              {words().common.remove}
            </Button>
          </span>
        </div>
      </fieldset>
    </li>
  );
}
