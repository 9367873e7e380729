/** Deleting a food of the keeper's own: one question, out of the mixes that use it, and a way back. */
import { Button } from 'react-aria-components';
import type { Mix, OwnFood } from '../../household/model.ts';
import { usesOwnFood, withOwnFoodAgain, withoutOwnFood } from '../../household/reckon/mix/mix-edits.ts';
import { words } from '../../words/words.ts';
import { AskFirst } from '../shared/AskFirst.tsx';
import { focusWhenThere } from '../shared/focus.ts';
import { go } from '../shared/route.ts';
import { useRemove, useSave } from '../store/household.ts';
import { useMixDraft } from '../store/mix-draft.tsx';

/** What was deleted, and the mixes that used it as they were. */
export interface Deleted {
  readonly food: OwnFood;
  readonly mixes: readonly Mix[];
}

/** Changes mixes; that at hand may have changes on their way to the server, and they and these are saved as one. */
function useMixChanges() {
  const { mix: atHand, change } = useMixDraft();
  const save = useSave('mixes');
  const to = async (before: Mix, after: Mix) => {
    if (before.id === atHand?.id) return change(() => after);
    await save.mutateAsync({ ...after, updatedAt: new Date().toISOString() }, before);
  };
  return { to, error: save.error };
}

export function DeleteFood(props: { own: OwnFood; onKeep(): void; onDeleted(deleted: Deleted): void }) {
  const { own } = props;
  const { house, mix: atHand } = useMixDraft();
  const mixes = useMixChanges();
  const erase = useRemove('foods');
  const { foods } = words();
  const t = foods.remove;
  const users = house.mixes
    .map((m) => (m.id === atHand?.id ? atHand : m))
    .filter((m) => usesOwnFood(m, own.id));

  function keep() {
    props.onKeep();
    focusWhenThere('.ask-delete');
  }

  async function remove() {
    if (erase.isPending) return;
    for (const mix of users) await mixes.to(mix, withoutOwnFood(mix, own.id));
    await erase.mutateAsync(own);
    props.onDeleted({ food: own, mixes: users });
    go('foods');
    focusWhenThere('.gone button');
  }

  return (
    <AskFirst
      question={t.ask(own.name)}
      error={mixes.error ?? erase.error}
      keep={t.keep}
      onKeep={keep}
      lose={users.length > 0 ? t.takeOut : t.lose}
      onLose={() => void remove().catch(() => {})} // its error says why
    >
      {users.length > 0 ? t.used(users.map((m) => m.name)) : t.unused}
    </AskFirst>
  );
}

/** That a food is gone, with the way back. */
export function Gone({ deleted, onBack }: { deleted: Deleted; onBack(): void }) {
  const { house, mix: atHand } = useMixDraft();
  const save = useSave('foods');
  const mixes = useMixChanges();
  const { foods, common } = words();
  const { food } = deleted;

  async function back() {
    await save.mutateAsync(food, undefined);
    for (const before of deleted.mixes) {
      const now = before.id === atHand?.id ? atHand : house.mixes.find((m) => m.id === before.id);
      if (now) await mixes.to(now, withOwnFoodAgain(now, before, food.id));
    }
    onBack();
    go('foods', food.id);
    focusWhenThere('.food-page h2');
  }

  return (
    <p className="notice-line gone" role="status">
      <span>{foods.remove.gone(food.name)}</span>{' '}
      <Button
        className="button small"
        isDisabled={save.isPending}
        onPress={() => void back().catch(() => {})} // its error says why
      >
        {common.undo}
      </Button>
      {(save.error ?? mixes.error) && <span role="alert">{(save.error ?? mixes.error)?.message}</span>}
    </p>
  );
}
