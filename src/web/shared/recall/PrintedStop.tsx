/** On paper, in the place of what is fed: that it is not. */
import type { Stop } from '../../../household/reckon/cupboard/stops.ts';
import { sayBarred } from '../../../kitchen/cupboard/barred.ts';
import { dayInWords } from '../../../kitchen/days.ts';
import { words } from '../../../words/words.ts';
import { StopShape } from './StopNotice.tsx';
import './recall.css';

export function PrintedStop({ stop }: { stop: Stop }) {
  const t = words().pelletStock.stop;
  return (
    <div className="stop-printed" data-state={stop.sure ? 'stopped' : 'maybe'}>
      <p className="stop-printed-head">
        <StopShape sure={stop.sure} /> <b>{stop.sure ? t.label : t.labelMaybe}</b>
      </p>
      {stop.lots.map(({ lot, barred }) => (
        <p key={lot.id}>{t.labelWhy(lot.name, sayBarred(barred.why), dayInWords(barred.on))}</p>
      ))}
    </div>
  );
}
