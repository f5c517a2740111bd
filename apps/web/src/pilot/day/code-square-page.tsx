import './code-square.css';
import { Link } from 'wouter';
import { Notice, Page, usePart } from '../../phone/index.js';
import { useAsFlown } from '../loaded/use-as-loaded.js';
import { useFlight } from '../use-flight.js';

const part = () => import('@drumline/loading/code-square');

/** The whole flight as a code square, the same as on its printed sheet: another phone reads it with no signal. */
export const CodeSquarePage = ({ id }: { readonly id: string }) => {
  const here = useFlight(id);
  const program = usePart(part);
  const asFlown = useAsFlown(here?.flight, here?.own.drums ?? []);
  if (here === undefined || here === null || asFlown === undefined) return <Page title={id} />;
  const flight = asFlown ?? here.flight;
  const { sheet } = flight;
  return (
    <Page
      above={`${flight.aircraft} · ${flight.route.join(' to ')}`}
      title={`${id} as a code square`}
      acts={
        <Link className="btn" href={`/${id}/1`}>
          Back to the leg
        </Link>
      }
    >
      {sheet === null ? (
        <p className="said">
          <b>No load sheet.</b> {flight.why}
        </p>
      ) : (
        <>
          {program === null && (
            <p className="said">
              <b>Not on this phone yet.</b> It needs a signal once. The check code stands below.
            </p>
          )}
          {asFlown === null && (
            <Notice kind="check" word="As planned." title="What was brought back is not in this square." />
          )}
          {program && <Square drawn={program.drawSquare(sheet.square)} of={id} />}
          <p className="square-of">
            {id} version {flight.version} · check code <b>{sheet.checkCode}</b>
          </p>
          <p className="foot">
            Plain words: drums, weights, limits, go-back lines and where to go when the strip closes, as on
            the printed sheet. Any phone that reads code squares shows them, with no signal. Not in it:
            tie-down and dangerous goods.
          </p>
        </>
      )}
    </Page>
  );
};

interface SquareProps {
  readonly drawn: { readonly side: number; readonly path: string };
  readonly of: string;
}

/** White round a square, in modules: less, and readers miss it. */
const quiet = 4;

/** Black on white by day and by night: readers look for that. */
const Square = ({ drawn: { side, path }, of }: SquareProps) => (
  <svg
    className="square"
    viewBox={`${-quiet} ${-quiet} ${side + 2 * quiet} ${side + 2 * quiet}`}
    role="img"
    aria-label={`Code square of ${of}`}
    shapeRendering="crispEdges"
  >
    <path d={path} />
  </svg>
);
