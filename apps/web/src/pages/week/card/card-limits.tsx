import { figure, inWords } from '../../../ui/index.js';
import type { Card, LegLimits, LimitLine } from './card-read.js';
import {
  aboardWords,
  fewerWords,
  isOver,
  limitName,
  roomWords,
  unknownWords,
  weighedWords,
} from './card-words.js';

const shown = 5;

/** Every limit of the tightest leg, of the others the one that binds. */
export const CardLimits = ({ card, legs }: { readonly card: Card; readonly legs: readonly LegLimits[] }) => {
  const weighed = weighedWords(card);
  const tightest = legs.reduce((one, other) => (roomOf(other) < roomOf(one) ? other : one));
  const fewer = fewerWords(card, tightest);
  return (
    <>
      {legs.map((leg) => (
        <table key={`${leg.from}-${leg.to}`} className="card-table">
          <caption className={legs.length > 1 ? undefined : 'unseen'}>
            {leg.from}-{leg.to}, {aboardWords(leg)}
          </caption>
          <tbody>
            {leg.limits.slice(0, leg === tightest ? shown : 1).map((limit) => (
              <Limit key={`${limit.name} ${limit.place} ${limit.surface}`} limit={limit} />
            ))}
          </tbody>
        </table>
      ))}
      {legs.flatMap(unknownWords).map((words) => words !== null && <p key={words}>{words}</p>)}
      {fewer !== null && <p>{fewer}</p>}
      {weighed !== null && <p>{weighed}</p>}
      <small>Planning figures. The commander's approved data decide.</small>
    </>
  );
};

const roomOf = ({ limits }: LegLimits): number => limits[0]?.spareLb ?? 0;

/** Positions are counted, not weighed: where they bind, all are taken. */
const roomAt = ({ positions, binds, spareLb }: LimitLine): string => {
  if (positions === null) return roomWords(spareLb);
  return binds ? 'all taken' : '';
};

const Limit = ({ limit }: { readonly limit: LimitLine }) => {
  const name = limitName(limit);
  return (
    <tr>
      <th scope="row">{limit.binds ? <b>{name}: binds</b> : name}</th>
      <td className="n">
        {limit.positions === null
          ? limit.limitLb !== null && inWords(limit.limitLb, 'lb')
          : figure(limit.positions)}
      </td>
      <td className={`n ${isOver(limit.spareLb) ? 'plum' : ''}`}>
        {limit.limitLb === null && limit.positions === null ? (
          <b className="plum">forbids</b>
        ) : limit.binds ? (
          <b>{roomAt(limit)}</b>
        ) : (
          roomAt(limit)
        )}
      </td>
    </tr>
  );
};
