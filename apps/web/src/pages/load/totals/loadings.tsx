import type { Calendar } from '../../../api/index.js';
import { figure, Lines } from '../../../ui/index.js';
import type { LoadedFlight } from '../load-read.js';

type Loading = LoadedFlight['loadings'][number];

interface LoadingsProps {
  readonly loadings: LoadedFlight['loadings'];
  readonly calendar: Calendar;
}

/** The totals that a flight was loaded by, as they were reported: the newest first, nothing of it is typed here. */
export const Loadings = ({ loadings, calendar }: LoadingsProps) =>
  loadings.map((loading) => (
    <section
      key={`${loading.at} ${loading.by} ${loading.version}`}
      className="section load-totals"
      aria-label={`Loaded by version ${loading.version}`}
    >
      <h2>
        Two totals <small>as loaded by version {loading.version}</small>
      </h2>
      <Lines
        caption={`Totals of the loading by version ${loading.version}`}
        captionUnseen
        rows={pairsOf(loading)}
        keyOf={({ name }) => name}
        columns={[
          { head: 'Total', cell: ({ name }) => name, heads: true },
          { head: 'By the sheet', cell: ({ bySheetLb }) => `${figure(bySheetLb)} lb`, figures: true },
          {
            head: 'The other hand',
            cell: ({ otherLb, other }) => `${figure(otherLb)} lb ${other}`,
            figures: true,
          },
          { head: 'Difference', cell: ({ differenceLb }) => `${figure(differenceLb)} lb`, figures: true },
        ]}
      />
      <p>
        <b>
          {loading.by}, {calendar.when(loading.at)}
        </b>
        , {meansWords[loading.means]}
        {[...loading.witnesses, ...codeWords(loading)].map((said) => `; ${said}`)}.
      </p>
      {loading.signed !== null && (
        <p>
          Difference signed by {loading.signed.by}
          {loading.signed.second === null ? '' : ` with ${loading.signed.second}`}: {loading.signed.reason}.
        </p>
      )}
      {loading.raised.map((words) => (
        <p key={words} className="plum">
          {words}
        </p>
      ))}
    </section>
  ));

const pairsOf = ({ load, takeOff }: Loading) => [
  { ...load, name: 'Load', other: 'by hand', otherLb: load.byHandLb },
  { ...takeOff, name: 'Take-off weight', other: 'by the aircraft', otherLb: takeOff.byAircraftLb },
];

const codeWords = ({ checkCode }: Loading): readonly string[] =>
  checkCode === null ? [] : [`check code ${checkCode}`];

const meansWords = {
  screen: 'entered at base',
  phone: 'by phone',
  radio: 'by radio',
  paper: 'from paper',
} as const;
