import './code-square.css';
import { Link } from 'wouter';
import { Page, usePart } from '../phone/index.js';
import { useFlight } from './use-flight.js';

const part = () => import('@drumline/loading/code-square');

/** The whole flight as a code square, the same as on its printed sheet: another phone reads it with no signal. */
export const CodeSquarePage = ({ id }: { readonly id: string }) => {
  const here = useFlight(id);
  const program = usePart(part);
  if (here === undefined || here === null) return <Page title={id} />;
  const { flight } = here;
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
          {program && <Square drawn={program.drawSquare(sheet.square)} of={id} />}
          <p className="square-of">
            {id} version {flight.version} · check code <b>{sheet.checkCode}</b>
          </p>
          <p className="foot">
            Every leg with drums, weights, limits and go-back lines, as on the printed sheet. Any phone that
            reads code squares reads it, with no signal.
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
