import type { MovementBody } from '@drumline/contract';
import { kilogramsPerLitre, litres } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import { readLine } from '../../pages/morning/paper/read-line.js';
import { corrected } from '../drums-here/drum-reports.js';
import { exampleDone } from '../testing/example-done.js';
import { exampleFlight, exampleReporter } from '../testing/example-flight.js';
import { deliveryAsTexts } from './as-text.js';
import { drumsSaid } from './own-reports.js';

const of = { timeZone: 'Etc/GMT', person: { fullName: exampleReporter.by, crew: 'FW1' } };
const kept = exampleDone('damaged');
const bodies = kept.requests.map(({ body }) => body as MovementBody);

/** As the office reads it under Radio and paper. */
const pasted = (text: string): readonly object[] => {
  const { id, route, stops, date, departs, version, state } = exampleFlight;
  const read = readLine(text, {
    ...{ day: date, means: 'radio', by: '', timeZone: of.timeZone, now: '2099-01-01T00:00:00Z' },
    places: route.map((code) => ({ code, name: code })),
    flights: [
      {
        ...{ id, state, version, date, departs, stops, pilot: 'FW1', loads: [] },
        ...{ fromPlace: route[0]!, toPlace: route.at(-1)!, legs: route.length - 1 },
      },
    ],
    ...{
      notGiven: [],
      drums: [],
      programmes: [],
      fillLitres: 200,
      countTolerance: { percentOfBook: 0, litresPerOpenDrum: litres(0), reference: '' },
      dipTables: [],
    },
    ...{ batches: [], densityTolerance: null, mayFill: false },
    bookDensityKgPerLitre: kilogramsPerLitre(0.8),
  });
  if (read?.kind !== 'entry') throw new Error(read?.words ?? 'nothing');
  return read.wanted.map(({ body }) => body);
};

/** By drum, kind, flight and leg reports are one movement; place and condition are what may differ between them. */
const counted = ['kind', 'drum', 'flight', 'leg', 'place', 'condition'];
const whatCounts = (body: object) =>
  Object.fromEntries(Object.entries(body).filter(([field]) => counted.includes(field)));

describe('a kept delivery as a text message', () => {
  it('is one message of 160 signs, by the crew', () => {
    const texts = deliveryAsTexts({ ...kept, by: exampleReporter.by }, of);
    expect(texts).toHaveLength(1);
    expect(texts[0]).toMatch(/ LEFT 0434 0435 DAMAGED BACK 0437 SEAL BY FW1$/);
    expect(texts[0]!.length).toBeLessThanOrEqual(160);
  });

  it('pasted in at base it is the same report as the one that the phone sends later: the two count once', () => {
    const [text] = deliveryAsTexts(kept, of);
    expect(pasted(text!).map(whatCounts)).toEqual(bodies.map(whatCounts));
  });

  it('somebody else’s report on the same phone bears their name as one word', () => {
    expect(deliveryAsTexts({ ...kept, by: 'A. Other Pilot' }, of)[0]).toMatch(/ BY A\.-OTHER-PILOT$/);
  });

  it('what takes a report back has no such form', () => {
    const [wrong] = drumsSaid([kept], new Set());
    const back = corrected(exampleReporter, exampleFlight, [{ wrong: wrong!, right: null }]);
    expect(deliveryAsTexts(back, of)).toEqual([]);
  });
});
