/** Everything out as files, and files in: looked at before anything is written. */
import { words } from '../../words/words.ts';
import { linkTo } from '../shared/route.ts';
import { BringIn } from './out-and-in/BringIn.tsx';
import { TakeOut } from './out-and-in/TakeOut.tsx';
import './out-and-in/out-and-in.css';

export function OutAndIn() {
  const t = words().exchange.ownTable;
  return (
    <>
      <TakeOut />
      <BringIn />
      <section className="panel" aria-label={t.title}>
        <h2>{t.title}</h2>
        <p>{t.text}</p>
        <a className="button" href={linkTo('household', 'table')}>
          {t.press}
        </a>
      </section>
    </>
  );
}
