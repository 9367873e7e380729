/** The sheet to weigh by on paper: worked out when it is asked for, hidden on the screen. */
import { useEffect, useState } from 'react';
import type { SheetPaper } from '../../../household/reckon/batch/weigh-paper.ts';
import type { Stop } from '../../../household/reckon/cupboard/stops.ts';
import type { CupboardContents } from '../../../kitchen/cupboard/cupboard.ts';
import { dayInWords } from '../../../kitchen/days.ts';
import type { Batch } from '../../../kitchen/model.ts';
import type { WeighLine } from '../../../kitchen/weighing/weigh-sheet.ts';
import { words } from '../../../words/words.ts';
import { Button } from '../../shared/plain/Button.tsx';
import { PrintedStop } from '../../shared/recall/PrintedStop.tsx';
import { today } from '../../shared/today.ts';
import { Sentence } from '../../shared/words/Sentence.tsx';
import { engine } from '../../worker/engine.ts';
import { useMaker } from '../Maker.tsx';
import { VerdictLine } from '../VerdictLine.tsx';
import { packWords, scaleStepShown } from '../view-model.ts';
import './sheet.css';

/** @param stop why it is not to be fed, where something barred lies in the bowl */
export function WeighSheetPaper(props: { batch: Batch; stop: Stop | undefined; kept(): CupboardContents }) {
  const { batch, stop, kept } = props;
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
        {words().weighing.sheet.print}
      </Button>
      {fault && <p role="alert">{fault}</p>}
      {sheet && (
        <Paper
          sheet={sheet}
          stop={stop}
          step={batch.problem.scale_step_grams}
          maker={batch.madeBy ?? maker}
        />
      )}
    </>
  );
}

function Paper(props: { sheet: SheetPaper; stop: Stop | undefined; step: number; maker: string }) {
  const { sheet, stop, step, maker } = props;
  const t = words().weighing.sheet;
  const f = words().figures;
  const [, places] = scaleStepShown(step);
  /** As the scale shows it; what was poured on a finer one with all its decimals. */
  const grams = (g: number) => {
    const shown = f.mass(g);
    return f.massUnit === 'oz' || Math.abs(shown - Number(shown.toFixed(places))) < 1e-9
      ? f.fixed(shown, places)
      : f.number(shown, 3);
  };
  const many = sheet.lines.length > 22;
  return (
    <div className={`print-sheet weigh-sheet${many ? ' many' : ''}`} aria-hidden="true">
      <header>
        <h1>{sheet.name}</h1>
        <p>{t.heading(sheet.grams, step, sheet.batch.slice(0, 8), dayInWords(sheet.begunOn))}</p>
        <p>
          <Sentence
            of={t.weighed}
            with={{ day: () => <i />, name: () => (maker ? <b>{maker}</b> : <i />) }}
          />
        </p>
        {stop && <PrintedStop stop={stop} />}
        {!stop?.sure && <VerdictLine verdict={sheet.verdict} id="sheet-verdict" />}
      </header>
      <table>
        <thead>
          <tr>
            <th>{t.food}</th>
            <th>{t.pour}</th>
            <th>{t.range}</th>
            <th>{t.total}</th>
            <th>{t.weighedColumn}</th>
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
              <td>{line.tolerance ? t.span(grams(line.tolerance[0]), grams(line.tolerance[1])) : '–'}</td>
              <td>{grams(line.reading)}</td>
              <td>
                <span className="weigh-box">{line.poured !== undefined && grams(line.poured)}</span>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <footer>
        <p>{t.rangeHelp}</p>
        {sheet.notes.map((note) => (
          <p key={note}>{note}</p>
        ))}
        {sheet.cautions.map((c) => (
          <p key={c.title + c.foods.join()}>
            <Sentence of={t.caution(c.foods, c.way)} with={{ b: (text) => <b>{text}</b> }} />
          </p>
        ))}
        <p>{t.notComplete}</p>
      </footer>
    </div>
  );
}

function LotWords({ line }: { line: WeighLine }) {
  if (!line.lots || line.lots.takes.length === 0) return null;
  return <small>{packWords(line.lots).join('; ')}</small>;
}
