import type { SurfaceState } from '@drumline/network';
import { useState } from 'react';
import {
  Choices,
  Main,
  NotKept,
  Page,
  type Person,
  Press,
  spanWords,
  useEntries,
  useTerritoryNow,
  whenWords,
} from '../../phone/index.js';
import { useDay } from '../day/day.js';
import { surfacesKnown } from './own-reports.js';
import { surfaceSeen } from './reports.js';
import { useReporting } from './use-reporting.js';

const states: readonly { readonly value: SurfaceState; readonly word: string; readonly small: string }[] = [
  { value: 'dry', word: 'Dry', small: 'no mark from a boot heel' },
  { value: 'damp', word: 'Damp', small: 'dark, a heel marks it' },
  { value: 'soft', word: 'Soft', small: 'wheels leave ruts' },
  { value: 'closed', word: 'Closed', small: 'nobody should land' },
];

/** What a strip is like now, by somebody who sees it. */
export const SurfacePage = ({ code, person }: { readonly code: string; readonly person: Person }) => {
  const read = useDay();
  const entries = useEntries() ?? [];
  const now = useTerritoryNow();
  const [state, setState] = useState<SurfaceState | null>(null);
  const [seen, setSeen] = useState<'on the ground' | 'from the air'>('on the ground');
  const { report, notKept } = useReporting(person);
  const last = surfacesKnown(read?.day.surfaceReports ?? [], entries).find(({ place }) => place === code);
  return (
    <Page
      above={
        last === undefined
          ? 'Nobody has reported'
          : `Last: ${last.state}, ${last.by}, ${whenWords(last.at, now)}, ${spanWords(now.getTime() - Date.parse(last.at))} ago`
      }
      title={`Surface at ${code}, now`}
      acts={
        <>
          <NotKept words={notKept} />
          <Press onPress={() => window.history.back()}>Back</Press>
          <Main
            waits={state === null ? 'Choose one' : null}
            small={state === null ? '' : `${state}, seen ${seen} by ${person.fullName}`}
            onPress={() =>
              state !== null &&
              void report((reporter) => surfaceSeen(reporter, code, { state, seen }), '/sent')
            }
          >
            Keep
          </Main>
        </>
      }
    >
      <Choices legend="It is" of={states} chosen={state} onChoose={setState} columns={1} />
      <Choices
        legend="Seen how?"
        of={[
          { value: 'on the ground', word: 'On the ground' },
          { value: 'from the air', word: 'From the air' },
        ]}
        chosen={seen}
        onChoose={setSeen}
      />
    </Page>
  );
};
