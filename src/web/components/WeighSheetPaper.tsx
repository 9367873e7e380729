/** The sheet to weigh by on paper: worked out when it is asked for, hidden on the screen. */
import { useEffect, useState } from 'react';
import { Button } from 'react-aria-components';
import type { Kept } from '../../kitchen/cupboard.ts';
import type { Batch } from '../../kitchen/model.ts';
import type { WeighSheet } from '../../kitchen/weigh-sheet.ts';
import { engine } from '../data/engine.ts';
import { gramWords } from '../mix/weigh-out-view.ts';

export function WeighSheetPaper({ batch, kept }: { batch: Batch; kept: Kept }) {
  const [sheet, setSheet] = useState<WeighSheet>();
  const [fault, setFault] = useState('');
  // Printed once it stands on the page.
  useEffect(() => {
    if (sheet) window.print();
  }, [sheet]);
  async function print() {
    const answer = await engine.weighSheet(batch, kept);
    if (answer.ok) setSheet({ ...answer.value });
    else setFault(answer.message);
  }
  return (
    <>
      <Button className="quiet-button" onPress={() => void print()}>
        Print the sheet to weigh by
      </Button>
      {fault && <p role="alert">{fault}</p>}
      {sheet && (
        <div className="print-sheet" aria-hidden="true">
          <h1>{sheet.name}</h1>
          <p>{gramWords(sheet.grams)} in all, weights as planned.</p>
          <table>
            <thead>
              <tr>
                <th>Food</th>
                <th>Planned</th>
                <th>Lots</th>
                <th>Weighed</th>
              </tr>
            </thead>
            <tbody>
              {sheet.lines.map((line) => (
                <tr key={line.food}>
                  <td>{line.name}</td>
                  <td>{gramWords(line.target)}</td>
                  <td>{line.lots?.takes.map((t) => `${t.lot.name} ${gramWords(t.grams)}`).join(', ')}</td>
                  <td>{line.poured === undefined ? '☐' : gramWords(line.poured)}</td>
                </tr>
              ))}
            </tbody>
          </table>
          {sheet.notes.map((note) => (
            <p key={note}>{note}</p>
          ))}
          <p>Not veterinary advice. A home mix never replaces a complete food.</p>
        </div>
      )}
    </>
  );
}
