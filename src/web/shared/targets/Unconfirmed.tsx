/** That a target's figures are from memory, with the way to where they are confirmed; nothing where none is. */
import type { TargetProfile } from '../../../targets/profile.ts';
import { linkTo } from '../route.ts';
import { unconfirmedWords } from './target-words.ts';

export function Unconfirmed({ profile }: { profile: TargetProfile }) {
  const words = unconfirmedWords(profile);
  return (
    words && (
      <span className="unconfirmed">
        {words} <a href={linkTo('targets', profile.id)}>Look at them</a>
      </span>
    )
  );
}
