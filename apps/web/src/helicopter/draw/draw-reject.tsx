import type { DrumToOpen } from '@drumline/stock';
import { useState } from 'react';
import { useLocation } from 'wouter';
import { Choices, DrumNumber, Main, Notice, NotKept, Page, Press } from '../../phone/index.js';
import { rejectReport } from '../reports.js';
import { begun } from '../words.js';
import { type Rejection, rejections } from './draw.js';
import type { DrawStep } from './draw-page.js';

const of = rejections.map((value) => ({ value, word: begun(value) }));

/** A drum that failed a check is on hold at once on this phone, and at base when it hears. */
export const DrawReject = ({
  row,
  place,
  draft,
  setDraft,
  keeping,
}: DrawStep & { readonly row: DrumToOpen }) => {
  const { number } = row.drum;
  const [why, setWhy] = useState<Rejection | null>(null);
  const [, go] = useLocation();
  const reject = async (reason: Rejection): Promise<void> => {
    if (!(await keeping.keepReport((reporter) => rejectReport(reporter, number, reason)))) return;
    // Drums that were looked at before it are pumped on.
    if (draft.drums.length > 0) return setDraft({ ...draft, checking: null, ticked: [], isRejecting: false });
    setDraft(null);
    go(`/at/${place}`);
  };
  return (
    <Page
      above={`Draw at ${place}`}
      title={
        <h1 className="title">
          <DrumNumber number={number} big /> <span className="beside">rejected</span>
        </h1>
      }
      acts={
        <>
          <NotKept words={keeping.notKept} />
          <Press onPress={() => setDraft({ ...draft, isRejecting: false })}>Back to the checks</Press>
          <Main
            waits={why === null ? 'Say what is wrong' : null}
            small={why === null ? '' : `${number} rejected: ${why}`}
            onPress={() => why !== null && void reject(why)}
          >
            Keep
          </Main>
        </>
      }
    >
      <Choices legend="What is wrong with it?" of={of} chosen={why} onChoose={setWhy} columns={1} />
      <Notice kind="check" word="Then." title={`${number} goes on hold on this phone at Keep.`}>
        Mark it X on the end. Base hears when this phone is next heard; fuel quality decides what becomes of
        it.
      </Notice>
    </Page>
  );
};
