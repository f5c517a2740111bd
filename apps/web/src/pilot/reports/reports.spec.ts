import type { MovementBody } from '@drumline/contract';
import { flightReportSchema, movementBodySchema } from '@drumline/contract';
import { describe, expect, it } from 'vitest';
import { corrected, drumsDone } from '../drums-here/drum-reports.js';
import type { Signed } from '../loaded/sign-for-it.js';
import { exampleDone } from '../testing/example-done.js';
import { exampleFlight, exampleReporter } from '../testing/example-flight.js';
import { heldHere, ownReports } from './own-reports.js';
import { changedOnly, toPlace } from './put-right.js';
import { landed, loaded, problem, refused, surfaceSeen, toldWrong, tookOff } from './reports.js';

const totals = {
  loadLb: 1189,
  byHandLb: 1189,
  takeoffLb: 6500,
  byAircraftLb: 6500,
  signed: null,
  bySoftFigures: false,
  attempts: ['1,189 lb by hand, 6,255 lb by the aircraft'],
};

/** As the phone keeps them, the newest first. */
const asKept = (...reports: readonly ReturnType<typeof drumsDone>[]) => reports.toReversed();

const left = exampleDone();

describe('what a pilot reports', () => {
  it('is in each case what base reads', () => {
    const reports = [
      loaded(exampleReporter, exampleFlight, totals),
      tookOff(exampleReporter, exampleFlight),
      landed(exampleReporter, exampleFlight, true),
      refused(exampleReporter, exampleFlight),
      problem(exampleReporter, exampleFlight, { what: 'cannot unload', words: ' ' }),
      toldWrong(exampleReporter, 'F06', { said: 'F06 took off', words: 'still here' }),
    ];
    for (const { requests } of reports)
      for (const { path, body } of requests) {
        expect(path).toMatch(/^\/api\/flight-reports\/id-\d+$/);
        expect(flightReportSchema.safeParse(withUuids(body)).error).toBeUndefined();
      }
    for (const { path, body } of left.requests) {
      expect(path).toMatch(/^\/api\/movements\/id-\d+$/);
      expect(movementBodySchema.safeParse(body).error).toBeUndefined();
    }
    const [surface] = surfaceSeen(exampleReporter, 'XGAN', { state: 'soft', seen: 'from the air' }).requests;
    expect(surface!.body).toMatchObject({ place: 'XGAN', state: 'soft', by: 'A. Pilot, from the air' });
  });

  it('says of every drum aboard where it stands and where it goes', () => {
    const body = loaded(exampleReporter, exampleFlight, totals).requests[0]?.body;
    expect(body).toMatchObject({
      version: 3,
      drums: [
        { drum: '0434', to: 'XGAN', position: 'R1L' },
        { drum: '0435', to: 'XGAN', position: 'R1R' },
        { drum: '0437', to: 'XGAN', position: 'R2L' },
      ],
    });
    expect(body).not.toHaveProperty('signed');
    expect(body).not.toHaveProperty('note');
  });

  it('totals typed again: those before stand in the note, also where they agreed', () => {
    const attempts = ['1,198 lb by hand, 6,255 lb by the aircraft', ...totals.attempts];
    const bodyOf = (signed: Signed | null) =>
      loaded(exampleReporter, exampleFlight, { ...totals, attempts, signed }).requests[0]?.body;
    expect(bodyOf(null)).toMatchObject({
      note: 'Typed before: 1,198 lb by hand, 6,255 lb by the aircraft.',
    });
    // Whoever signs has them in the reason.
    expect(bodyOf({ by: 'A. Pilot', reason: 'scale is out', second: 'S. Keeper' })).not.toHaveProperty(
      'note',
    );
  });

  it('by a sheet that does not hold says so to base', () => {
    const sheet = { ...exampleFlight.sheet!, holds: false, faults: ['XMER-XGAN: 12 lb over landing limit'] };
    const body = loaded(exampleReporter, { ...exampleFlight, sheet }, totals).requests[0]?.body;
    expect(body).toMatchObject({
      doesNotHold: 'XMER-XGAN: 12 lb over landing limit.',
      allTheSame: true,
    });
  });

  it('of drums is one entry; what is not left rides to the end of the flight', () => {
    expect(left.words).toBe('2 left at XGAN, 1 brought back');
    expect(left.requests.map(({ body }) => body)).toMatchObject([
      { kind: 'left at', drum: '0434', place: 'XGAN', leg: 1, happenedAt: '2027-06-15T06:21:30Z' },
      { kind: 'left at', drum: '0435', place: 'XGAN', leg: 1 },
      { kind: 'brought home', drum: '0437', place: 'XMER', leg: 2, condition: 'seal broken' },
    ]);
  });
});

describe('a correction', () => {
  const said = ownReports(asKept(left), 'F06').drums;
  const [first, second, third] = said as [(typeof said)[0], (typeof said)[0], (typeof said)[0]];
  const later = { ...exampleReporter, clock: { ...exampleReporter.clock, at: '2027-06-15T09:00:00.000Z' } };
  const make = (right: Parameters<typeof changedOnly>[1]) =>
    corrected(later, exampleFlight, changedOnly(said, right));

  it('takes back only what was wrong and gives what is so, at the time when it happened', () => {
    const report = make({
      [second.id]: { kind: 'brought home', condition: 'sound', place: 'XGAN' },
      [third.id]: { kind: 'left at', condition: 'sound', place: 'XGAN' },
    });
    expect(report.words).toBe('Corrected: 0435 brought back, 0437 left at XGAN');
    const bodies = report.requests.map(({ body }) => body as MovementBody);
    expect(bodies.map(({ kind }) => kind)).toEqual(['corrected', 'brought home', 'corrected', 'left at']);
    expect(bodies).toMatchObject([
      {
        corrects: second.id,
        reason: 'Reported was: 0435 left at XGAN. So it is: 0435 brought back.',
        happenedAt: '2027-06-15T09:00:00Z',
      },
      {
        drum: '0435',
        place: 'XMER',
        leg: 2,
        happenedAt: '2027-06-15T06:21:30Z',
        writtenAt: '2027-06-15T09:00:00Z',
      },
      { corrects: third.id },
      { drum: '0437', place: 'XGAN', leg: 1 },
    ]);
  });

  it('of a drum of which nothing is so is a reversal alone', () => {
    const report = make({ [first.id]: null });
    expect(report.words).toBe('Corrected: nothing of 0434');
    expect(report.requests.map(({ body }) => (body as MovementBody).kind)).toEqual(['corrected']);
  });

  it('of the place is one for every drum that was left, and none for one that came back', () => {
    const right = toPlace(said, {}, 'XESK');
    expect(changedOnly(said, right).map(({ wrong }) => wrong.drum)).toEqual(['0434', '0435']);
  });

  it('of nothing is none', () => {
    expect(changedOnly(said, { [first.id]: { kind: 'left at', condition: 'sound', place: 'XGAN' } })).toEqual(
      [],
    );
  });

  it('leaves on the phone what is so: the drums, and which of them are held', () => {
    expect(heldHere(asKept(left))).toEqual(new Set(['0437']));
    const right = make({ [third.id]: { kind: 'left at', condition: 'sound', place: 'XGAN' } });
    const entries = asKept(left, right);
    expect(heldHere(entries)).toEqual(new Set());
    expect(ownReports(entries, 'F06').drums.map(({ drum, kind }) => `${drum} ${kind}`)).toEqual([
      '0434 left at',
      '0435 left at',
      '0437 left at',
    ]);
  });
});

/** The spec's ids are short. */
const withUuids = (body: object): unknown =>
  JSON.parse(JSON.stringify(body).replaceAll(/"id-\d+"/g, '"3f0f6a2e-6a3e-4a52-9c7b-0a4f7f0f4a11"'));
