/** A keeper's own table comes in: the table, what its columns mean, what becomes of its rows, and what is then written. */
import { useLeaving } from '../../shared/hooks/leaving.ts';
import { useMixDraft } from '../../store/mix-draft.tsx';
import { TableColumns } from './TableColumns.tsx';
import { TableOutcome } from './TableOutcome.tsx';
import { TableQuestions } from './TableQuestions.tsx';
import { TableRows } from './TableRows.tsx';
import { TableSourceForm } from './TableSourceForm.tsx';
import { useTable } from './useTable.ts';
import './table.css';

export function TableWizard() {
  const { house } = useMixDraft();
  const inHand = useTable(house.foods);
  const { table } = inHand;
  const free = useLeaving(inHand.source !== undefined);
  return (
    <div className="table-wizard">
      <TableSourceForm inHand={inHand} />
      {table && (
        <>
          {table.columns.length > 0 && <TableColumns inHand={inHand} columns={table.columns} />}
          <TableQuestions table={table} inHand={inHand} />
          {table.rows.length > 0 &&
            !table.questions.some((q) => q.answer === undefined && q.id !== 'columns') && (
              <TableRows rows={table.rows} inHand={inHand} ownFoods={house.foods} />
            )}
          <TableOutcome
            key={inHand.source?.name}
            table={table}
            inHand={inHand}
            house={house}
            written={free}
          />
        </>
      )}
    </div>
  );
}
