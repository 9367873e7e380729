/** That a target's figures are from memory, with the way to where they are confirmed; nothing where none is. */
import type { TargetProfile } from '../../../targets/profile.ts';
import { words } from '../../../words/words.ts';
import { linkTo } from '../route.ts';
import { unconfirmedWords } from './target-words.ts';

export function Unconfirmed({ profile }: { profile: TargetProfile }) {
  const said = unconfirmedWords(profile);
  return (
    said && (
      <span className="unconfirmed">
        {said} <a href={linkTo('targets', profile.id)}>{words().targets.unconfirmed.look}</a>
      </span>
    )
  );
}
