import './cabin.css';
import { figure, LevelMark } from '../../../ui/index.js';
import type { Cabin, Load, Placed } from '../load-read.js';
import type { SheetDrum } from '../sheet-read.js';
import { rowsOf, sideOf } from './standing.js';

interface PositionsPlanProps {
  readonly cabin: Cabin;
  readonly sheet: Load['sheet'];
  readonly placed: readonly Placed[];
  readonly leave: ReadonlyMap<string, string>;
  readonly note: string | null;
  /** Chosen places, while drums are being moved. */
  readonly chosen: string | null;
  /** Null: drums stay where they are. */
  readonly onChoose: ((position: string) => void) | null;
  readonly tied: ReadonlySet<string>;
  readonly onTied: (drum: string) => void;
}

/** The cabin from above, nose to the left: every place with its drum, what it weighs and where it comes from. */
export const PositionsPlan = (props: PositionsPlanProps) => {
  const { cabin, sheet, placed, note } = props;
  const rows = rowsOf(cabin);
  const cargoAt = (id: string) => sheet.cargo.filter(({ place }) => place === id);
  return (
    <div className="load-cabin">
      <p className="side">right side</p>
      <ul className="hull" aria-label="Places for drums, nose first">
        {rows.map((places) => (
          <li key={places[0]!.armIn} className="row">
            <ul>
              {places.map(({ id }) => {
                const number = placed.find(({ position }) => position === id)?.drum;
                const drum = sheet.drums.find((each) => each.number === number);
                return (
                  <li key={id} className={`place side-${sideOf(id)}`}>
                    <PlaceBox {...props} id={id} drum={drum} cargo={cargoAt(id).map(({ name }) => name)} />
                  </li>
                );
              })}
            </ul>
            <span className="arm">
              {figure(places[0]!.armIn)} in, <small>no. {places[0]!.unloadOrder} out</small>
            </span>
          </li>
        ))}
      </ul>
      <p className="side">left side{note === null ? '' : `; ${note}`}</p>
    </div>
  );
};

interface PlaceBoxProps extends PositionsPlanProps {
  readonly id: string;
  readonly drum: SheetDrum | undefined;
  readonly cargo: readonly string[];
}

const PlaceBox = ({ id, drum, cargo, leave, chosen, onChoose, tied, onTied }: PlaceBoxProps) => {
  const leaveWords = drum && leave.get(drum.number);
  const what = (
    <>
      <span className="id">{id}</span>
      <b className="number">{drum?.number ?? ''}</b>
      {drum !== undefined && (
        <span className="weights">
          {figure(drum.grossKg, 1)} kg, <b>{figure(drum.lb)} lb</b>
        </span>
      )}
      {drum !== undefined && <span className="batch">{drum.batch}</span>}
      {cargo.length > 0 && <span>{cargo.join(', ')}</span>}
      {drum === undefined && cargo.length === 0 && <span className="slate">empty</span>}
      {drum?.onHold && <LevelMark level="held" />}
      {leaveWords && <span className="leave">{leaveWords}</span>}
    </>
  );
  return (
    <div className={`box ${leaveWords ? 'stays' : ''} ${drum === undefined ? 'free' : ''}`}>
      {onChoose === null ? (
        <div className="what">{what}</div>
      ) : (
        <button
          type="button"
          className="what"
          aria-pressed={chosen === id}
          aria-label={`${id}, ${drum === undefined ? 'empty' : `drum ${drum.number}`}`}
          onClick={() => onChoose(id)}
        >
          {what}
        </button>
      )}
      {drum !== undefined && !drum.onHold && (
        <label className="tied">
          tied
          <input
            type="checkbox"
            aria-label={`${drum.number} tied`}
            checked={tied.has(drum.number)}
            onChange={() => onTied(drum.number)}
          />
        </label>
      )}
    </div>
  );
};
