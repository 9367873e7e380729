/** What the lines of the picture mean. */
import type { KitchenPlan } from '../../kitchen/calendar/kitchen-plan.ts';
import { dayInWords } from '../../kitchen/days.ts';
import type { Day } from '../../kitchen/model.ts';
import { words } from '../../words/words.ts';

export function PictureKey({ plan, day }: { plan: KitchenPlan; day: Day }) {
  const t = words().calendar.picture;
  return (
    <p className="cal-key">
      <span>
        <i className="cal-key-pace" /> {t.setsPace}
      </span>
      <span>
        <i className="cal-key-wait" /> {t.waits}
      </span>
      <span>
        <b>✓</b> {t.done}
      </span>
      <span>
        <i className="cal-key-today" /> {t.today}
      </span>
      {plan.deadline !== undefined && (
        <span>
          <i className="cal-key-due" /> {t.due(dayInWords(plan.deadline, day))}
        </span>
      )}
    </p>
  );
}
