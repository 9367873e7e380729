/** The sheet to weigh by on paper: worked out when it is asked for, hidden on the screen. */
import { useEffect, useState } from 'react';
import { Button } from 'react-aria-components';
import { joined } from '../../formulation/explain/sentences.ts';
import type { SheetPaper } from '../../household/reckon/batch/weigh-paper.ts';
import type { CupboardContents } from '../../kitchen/cupboard/cupboard.ts';
import { dayInWords } from '../../kitchen/days.ts';
import type { Batch } from '../../kitchen/model.ts';
import type { WeighLine } from '../../kitchen/weighing/weigh-sheet.ts';
import { today } from '../shared/today.ts';
import { gramWords } from '../shared/words/gram-words.ts';
import { engine } from '../worker/engine.ts';
import { useMaker } from './Maker.tsx';
import './sheet.css';
import { decimalsOf } from '../../kitchen/rounding.ts';

export function WeighSheetPaper({ batch, kept }: { batch: Batch; kept(): CupboardContents }) {
  const [sheet, setSheet] = useState<SheetPaper>();
  const [fault, setFault] = useState('');
  const [maker] = useMaker();
  // Printed once it stands on the page.
  useEffect(() => {
    if (sheet) window.print();
  }, [sheet]);
  async function print() {
    const answer = await engine.weighSheet(batch, kept(), today());
    if (answer.ok) setSheet({ ...answer.value });
    else setFault(answer.message);
  }
  return (
    <>
      <Button className="quiet-button" onPress={() => void print()}>
        Print the sheet to weigh by
      </Button>
      {fault && <p role="alert">{fault}</p>}
      {sheet && <Paper sheet={sheet} step={batch.problem.scale_step_grams} maker={batch.madeBy ?? maker} />}
    </>
  );
}

function Paper({ sheet, step, maker }: { sheet: SheetPaper; step: number; maker: string }) {
  const places = decimalsOf(step);
  const grams = (g: number) =>
    Math.abs(g - Number(g.toFixed(places))) < 1e-9 ? g.toFixed(places) : String(g);
  const many = sheet.lines.length > 22;
  return (
    <div className={`print-sheet weigh-sheet${many ? ' many' : ''}`} aria-hidden="true">
      <header>
        <h1>{sheet.name}</h1>
        <p>
          To weigh out: {gramWords(sheet.grams)} in steps of {gramWords(step)}. Batch{' '}
          {sheet.batch.slice(0, 8)}, begun on {dayInWords(sheet.begunOn)}.
        </p>
        <p>
          Weighed on <i /> by {maker ? <b>{maker}</b> : <i />}
        </p>
        <p>{sheet.verdict}</p>
      </header>
      <table>
        <thead>
          <tr>
            <th>food, and the lot it comes from</th>
            <th>pour, g</th>
            <th>from–to</th>
            <th>total, g</th>
            <th>weighed, g</th>
          </tr>
        </thead>
        <tbody>
          {sheet.lines.map((line) => (
            <tr key={line.food}>
              <td>
                {line.name}
                <LotWords line={line} />
              </td>
              <td>{grams(line.target)}</td>
              <td>{line.tolerance ? `${grams(line.tolerance[0])} to ${grams(line.tolerance[1])}` : '–'}</td>
              <td>{grams(line.reading)}</td>
              <td>
                <span className="weigh-box">{line.poured !== undefined && grams(line.poured)}</span>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <footer>
        <p>
          From–to: the batch stays in range while this food lies between and all others are as printed. If one
          is outside, or several are off, write it in on the page: the others then change.
        </p>
        {sheet.notes.map((note) => (
          <p key={note}>{note}</p>
        ))}
        {sheet.cautions.map((c) => (
          <p key={c.title + c.foods.join()}>
            <b>{joined(c.foods)}:</b> {c.way}
          </p>
        ))}
        <p>Not veterinary advice. A home mix never replaces a complete food.</p>
      </footer>
    </div>
  );
}

function LotWords({ line }: { line: WeighLine }) {
  const takes = line.lots?.takes ?? [];
  if (takes.length === 0) return null;
  const said = takes.map(({ lot, grams }) => {
    const day = dayInWords(lot.boughtOn);
    const name = lot.name.includes(day) ? lot.name : `${lot.name}, ${day}`;
    return takes.length > 1 || line.lots!.short > 0 ? `${name} (${gramWords(grams)})` : name;
  });
  return <small>{said.join('; ')}</small>;
}
