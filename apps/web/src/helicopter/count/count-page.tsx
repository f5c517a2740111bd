import { print } from '@drumline/units';
import { Link, useLocation } from 'wouter';
import { Choices, dateWords, Main, NotKept, Page, Press, useDraft, useKeeping } from '../../phone/index.js';
import { cacheView } from '../cache-view.js';
import { foundInOpen, type OpenDrumsDraft } from '../dip/dips.js';
import { type CountReport, countReport, litresSeen } from '../reports.js';
import { Stepper } from '../stepper.js';
import type { AtPlace } from '../use-places.js';
import { daysWords } from '../words.js';
import { OpenDrums } from './open-drums.js';

interface CountDraft extends OpenDrumsDraft {
  readonly sealed: number;
  readonly empty: number;
  readonly seenFrom: 'ground' | 'air';
  /** Somebody has said that nothing stands here; absent: nobody has. */
  readonly isBare?: boolean;
}

const nothingYet: CountDraft = { sealed: 0, open: 0, empty: 0, openLitres: '', seenFrom: 'ground' };

/** What stands here, by somebody who sees it. The book stays hidden, so that it cannot lead the eye. */
export const CountPage = ({ here, place, person }: AtPlace) => {
  const { name, stock } = cacheView(here, place);
  const [draft, setDraft] = useDraft<CountDraft>(`count ${place} ${here.today}`, nothingYet);
  const { keepReport, notKept } = useKeeping(person);
  const [, go] = useLocation();
  const count = countOf(draft, place, here);
  const isDipped = draft.seenFrom === 'ground' && draft.open > 0;
  const isNothing = draft.sealed + draft.open + draft.empty === 0;
  const waits =
    isNothing && draft.isBare !== true
      ? 'Count first, or say that no drum stands here'
      : isDipped && count.openLitres === null
        ? 'What is in the open drums first'
        : null;
  const keep = async (): Promise<void> => {
    if (!(await keepReport((reporter) => countReport(reporter, count)))) return;
    setDraft(null);
    go(`/at/${place}/counted`);
  };
  const last = stock.lastCount?.count.at;
  return (
    <Page
      above={
        last === undefined
          ? 'Never counted'
          : `Last count ${dateWords(last)}, ${daysWords(last.slice(0, 10), here.today)} old`
      }
      title={`Count ${name} ${place}`}
      acts={
        <>
          <NotKept words={notKept} />
          <Main
            waits={waits}
            small={`${print(litresSeen(count), 'L')} seen: ${draft.sealed} sealed, ${draft.open} open, ${draft.empty} empty`}
            onPress={() => void keep()}
          >
            Keep
          </Main>
        </>
      }
    >
      <Stepper
        word="Sealed"
        how="tell-tale whole"
        many={draft.sealed}
        onStep={(sealed) => setDraft({ ...draft, sealed })}
      />
      <Stepper
        word="Open"
        how="with fuel in"
        many={draft.open}
        onStep={(open) => setDraft({ ...draft, open })}
      />
      <Stepper
        word="Empty"
        how="bung closed"
        many={draft.empty}
        onStep={(empty) => setDraft({ ...draft, empty })}
      />
      {isNothing && (
        <div className="grid">
          <Press
            on={draft.isBare === true}
            onPress={() => setDraft({ ...draft, isBare: draft.isBare !== true })}
          >
            No drum stands here
          </Press>
        </div>
      )}
      <Choices
        legend="Seen how?"
        of={[
          { value: 'ground', word: 'On the ground' },
          { value: 'air', word: 'From the air' },
        ]}
        chosen={draft.seenFrom}
        onChoose={(seenFrom) => setDraft({ ...draft, seenFrom })}
      />
      {isDipped && (
        <OpenDrums
          draft={draft}
          tables={here.places.dipTables ?? []}
          onChange={(changed) => setDraft({ ...draft, ...changed })}
        />
      )}
      <p className="foot">
        {draft.seenFrom === 'air' &&
          `From the air counts for less.${draft.open > 0 ? ' An open drum counts as nothing until somebody dips it.' : ''} `}
        The book’s figure is shown after you press Keep, so that it cannot lead your eye.
      </p>
      <Link className="btn inset back" href={`/at/${place}`}>
        Back to {name}
      </Link>
    </Page>
  );
};

const countOf = (draft: CountDraft, place: string, here: AtPlace['here']): CountReport => {
  const isDipped = draft.seenFrom === 'ground' && draft.open > 0;
  const { litres: openLitres, words } = foundInOpen(draft, here.places.dipTables ?? []);
  return {
    place,
    seenFrom: draft.seenFrom,
    sealedDrums: draft.sealed,
    openDrums: draft.open,
    emptyDrums: draft.empty,
    openLitres: isDipped ? openLitres : null,
    ...(isDipped && words !== undefined && { words }),
    fillLitres: here.outlook.fillLitres,
  };
};
