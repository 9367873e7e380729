/** The whole answer as it is given out: the nearest mix with its contents, verdict, spans and whole grams. */
import { paired } from '../lib/paired.ts';
import { formulate, inTurn, problems } from '../lib/stage.ts';
import { problemsFor, type Question } from './measured.ts';

export const whole: Question = async (at, size, effort) => {
  const asked = problems(problemsFor(effort), size, at);
  const { times } = await paired(
    {
      ours: {
        work: (round) => {
          const formulation = formulate(inTurn(asked, round), at);
          const answer = formulation.solve();
          formulation.dispose();
          return answer;
        },
      },
    },
    effort,
  );
  return { times, agreed: '' };
};
