import { NotSetUp } from '../../../ui/index.js';
import type { Address } from '../address.js';
import { elsewherePath } from '../drums-read.js';
import { DrumList } from './drum-list.js';
import { FillView } from './fill-view.js';
import { HeldView } from './held-view.js';
import { LedgerView } from './ledger-view.js';
import { PickView } from './pick-view.js';
import { RaisedView } from './raised-view.js';
import { RetestView } from './retest-view.js';

/** What was searched for, or the list that was chosen. */
export const ShownView = ({ address }: { readonly address: Address }) => {
  const { view, last, drum, go } = address;
  if (last !== '')
    return (
      <DrumList
        title={`Ends in ${last}`}
        path={`/api/drums?limit=50&last=${encodeURIComponent(last)}`}
        empty={`No drum ends in ${last}. A number that cannot be read gets a provisional one with its first report.`}
        current={drum}
        go={go}
      />
    );
  const list = { current: drum, go };
  switch (view) {
    case 'all':
      return (
        <DrumList
          {...list}
          title="All drums"
          path="/api/drums?limit=200"
          empty={
            <NotSetUp
              what="No drum is in the ledger yet"
              why="Drums come in as a file of numbers, with where each stands and what is in it, or one by one as they are filled."
              step="files"
              stepWords="Set-up, Files"
            />
          }
        />
      );
    case 'open':
      return (
        <DrumList
          {...list}
          title="Open drums"
          path="/api/drums?limit=200&view=open"
          empty="No drum is open by the book."
        />
      );
    case 'empties':
      return (
        <DrumList
          {...list}
          title="Empties"
          path="/api/drums?limit=200&view=empties"
          empty="No empty drum is in the book by number."
        />
      );
    case 'elsewhere':
      return (
        <DrumList
          {...list}
          title="Aboard, or not known"
          path={elsewherePath}
          empty="Every drum stands at a place by the book, and what is in it is known."
        />
      );
    case 'fill':
      return <FillView go={go} />;
    case 'pick':
      return <PickView current={drum} go={go} />;
    case 'held':
      return <HeldView current={drum} go={go} />;
    case 'retest':
      return <RetestView current={drum} go={go} />;
    case 'raised':
      return <RaisedView address={address} />;
    case 'ledger':
      return <LedgerView address={address} />;
  }
};
