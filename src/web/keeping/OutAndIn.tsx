/** Everything out as files, and files in: looked at before anything is written. */
import { linkTo } from '../shared/route.ts';
import { BringIn } from './out-and-in/BringIn.tsx';
import { TakeOut } from './out-and-in/TakeOut.tsx';
import './out-and-in/out-and-in.css';

export function OutAndIn() {
  return (
    <>
      <TakeOut />
      <BringIn />
      <section className="panel" aria-label="A table of your own">
        <h2>A table of your own</h2>
        <p>Foods and shares that you keep in a spreadsheet come in as foods of your own and a mix.</p>
        <a className="button" href={linkTo('household', 'table')}>
          Bring in a table
        </a>
      </section>
    </>
  );
}
