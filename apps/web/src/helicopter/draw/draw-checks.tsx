import { beforeDraw, type DrumToOpen } from '@drumline/stock';
import { Link } from 'wouter';
import { DrumNumber, Main, Notice, Page } from '../../phone/index.js';
import type { CacheView } from '../cache-view.js';
import { TickRow } from '../tick-row.js';
import { checksOf, missingChecks } from './draw.js';
import { nextToOpen } from './draw-draft.js';
import type { DrawStep } from './draw-page.js';

/** What is ticked before a drum is pumped. */
export const DrawChecks = ({
  row,
  view,
  place,
  draft,
  setDraft,
}: DrawStep & { readonly row: DrumToOpen; readonly view: CacheView }) => {
  const { number } = row.drum;
  const checks = checksOf(row);
  const ticked = new Set(draft.ticked);
  const first = nextToOpen(view, draft.drums)?.drum.number;
  const turn = (id: string) =>
    setDraft({
      ...draft,
      ticked: ticked.has(id) ? draft.ticked.filter((each) => each !== id) : [...draft.ticked, id],
    });
  return (
    <Page
      above={`Draw at ${place} · drum ${draft.drums.length + 1}`}
      title={
        <h1 className="title">
          <DrumNumber number={number} big /> <span className="beside">before pumping</span>
        </h1>
      }
      acts={
        <>
          <div className="two">
            <Link className="btn" href={`/at/${place}`} onClick={() => setDraft(null)}>
              Back
            </Link>
            <button
              type="button"
              className="btn stop"
              onClick={() => setDraft({ ...draft, isRejecting: true })}
            >
              Reject: mark it X
            </button>
          </div>
          <Main
            waits={missingChecks(checks, ticked)}
            onPress={() =>
              setDraft({ ...draft, drums: [...draft.drums, number], checking: null, ticked: [] })
            }
          >
            Checked
          </Main>
        </>
      }
    >
      {first !== undefined && first !== number && (
        <Notice kind="check" word="Check." title={`${first} comes before it.`}>
          It is part used or older. You may draw from {number} all the same.
        </Notice>
      )}
      <ul className="rows">
        {checks.map(({ id, word, how }) => (
          <TickRow key={id} ticked={ticked.has(id)} onTurn={() => turn(id)}>
            <b>{word}</b>
            <span className="small soft says">{how}</span>
          </TickRow>
        ))}
      </ul>
      <p className="said">
        <b>
          {ticked.size} of {checks.length}.
        </b>{' '}
        One that fails rejects the drum. Before you open it: {beforeDraw}.
      </p>
    </Page>
  );
};
