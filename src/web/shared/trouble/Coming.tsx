/** In place of what draws from lists that are not here yet: that they come, or why they could not be had. */
import { words } from '../../../words/words.ts';
import { useHousehold } from '../../store/household.ts';
import { Button } from '../plain/Button.tsx';

/** @param say that they come */
export function Coming({ say }: { say: string }) {
  const { error, refetch } = useHousehold();
  if (!error) return <p role="status">{say}</p>;
  return (
    <>
      <p role="alert">{error.message}</p>
      <Button className="button" onPress={() => void refetch()}>
        {words().common.tryAgain}
      </Button>
    </>
  );
}
