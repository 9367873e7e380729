/** What the caution list says of a name, said while it is typed. */
import { cautionsFor } from '../../foods/cautions/find.ts';
import { CautionWords } from '../shared/CautionWords.tsx';
import '../shared/styles/cautions.css';

export function NameCautions({ name, species }: { name: string; species?: string }) {
  const hits = name.trim() === '' ? [] : cautionsFor({ name }, species);
  return (
    <div role="status" className="wide">
      {hits.length > 0 && (
        <ul className="cautions">
          {hits.map(({ caution }) => (
            <li key={caution.id} className={`caution-card ${caution.severity}`}>
              <CautionWords caution={caution} />
            </li>
          ))}
        </ul>
      )}
    </div>
  );
}
