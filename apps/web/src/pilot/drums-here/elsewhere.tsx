import { Link, useLocation } from 'wouter';
import { Notice, Page } from '../../phone/index.js';
import { PlaceRows } from '../leg/place-rows.js';
import { useFlight } from '../use-flight.js';

/** Drums that come down where the plan has no landing. */
export const Elsewhere = ({ id, leg }: { readonly id: string; readonly leg: number }) => {
  const here = useFlight(id);
  const [, go] = useLocation();
  if (here === undefined || here === null) return <Page title={id} />;
  const { flight } = here;
  const planned = flight.route[leg]!;
  return (
    <Page
      above={
        <Link href={`/${id}/${leg}`}>
          {id} · {flight.aircraft} · planned for {planned}
        </Link>
      }
      title="Where are the drums?"
    >
      <Notice kind="note" word="That is all right." title="Any place counts.">
        The plan does not stop you. The dispatcher gets one thing to look at.
      </Notice>
      <PlaceRows here={here} leg={leg} but={planned} onChoose={(code) => go(`/${id}/left/${leg}/${code}`)} />
    </Page>
  );
};
