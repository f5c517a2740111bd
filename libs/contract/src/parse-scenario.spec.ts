import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { printPath } from './faults/fault.js';
import { parseScenario } from './parse-scenario.js';
import { afterSpoiling, tinyDocument } from './tiny-document.js';

describe('a sound document', () => {
  it('drums that were reported so are a doubt, not a fault: the operation goes on', () => {
    const document = tinyDocument();
    const [first, ...others] = document.drums;
    const odd = { ...document, drums: [{ ...first!, litres: 300, grossKg: 0 }, ...others] };
    expect(parseScenario(odd).ok).toBe(false);
    const reported = parseScenario(odd, 'ledger');
    expect(reported.ok).toBe(true);
    expect(reported.doubts.map(({ path }) => path)).toEqual(
      expect.arrayContaining(['drums[0].litres', 'drums[0].grossKg']),
    );
  });

  it('a line of the hand plan that names what is there no more is left out and doubted, once the territory is kept', () => {
    const [flight] = tinyDocument().flights;
    const handPlan = [
      { ...flight, id: 'H1' },
      { ...flight, id: 'H2', pilot: 'P9' },
    ];
    const document = { ...tinyDocument(), handPlan };
    expect(parseScenario(document).ok).toBe(false);
    const kept = parseScenario(document, 'ledger');
    expect(kept.ok && kept.scenario.handPlan.map(({ id }) => id)).toEqual(['H1']);
    expect(kept.doubts.map(({ path }) => path)).toEqual(['handPlan[1].pilot']);
  });

  it('is read without fault or doubt, from text or value', () => {
    const fromValue = parseScenario(tinyDocument());
    expect(fromValue).toEqual({ ok: true, scenario: tinyDocument(), doubts: [] });
    expect(parseScenario(JSON.stringify(tinyDocument()))).toEqual(fromValue);
  });

  it('may have optional fields left out, but not set to null', () => {
    expect(afterSpoiling((document) => delete document.surfaceReports[0].untilDate).faults).toEqual([]);
    expect(
      afterSpoiling((document) => {
        document.surfaceReports[0].untilDate = null;
      }).faults,
    ).toEqual(['surfaceReports[0].untilDate: null is not text. Correct it.']);
  });
});

describe('all faults come at once', () => {
  const { faults } = afterSpoiling((document) => {
    document.places[1].stripClass = 7;
    document.drums[0].litres = -200;
    document.drums[1].place = 'XNRO';
    delete document.drums[2].openedOn;
    document.stripLimits[1].landingLb = 66_500;
    document.slings[0].date = '2031-04-05';
    document.timeZone = 'Moon/Base';
    document.aircraftTypes[0].cruisKt = 140;
  });

  it('faults of form in every part of the document', () => {
    expect(faults).toContain('places[1].stripClass: 7 does not fit: a strip class is 1, 2, 3 or 4.');
    expect(faults).toContain('drums[0].litres: -200 is too small. Give at least 0.');
    expect(faults).toContain('aircraftTypes[0].cruisKt: this field is not known. Did you mean cruiseKt?');
  });

  it('and faults across the document in the parts whose form is sound', () => {
    expect(faults).toContain(
      'drums[2].openedOn: drum 003 is part used without the day it was opened. Add the day.',
    );
    expect(faults).toContain(
      'timeZone: Moon/Base is not a time zone of the IANA list. Write one like Etc/GMT or Europe/Oslo.',
    );
    expect(faults).toContain(
      'slings[0].date: 2031-04-05 is outside the days looked ahead, 2031-03-03 to 2031-03-07. Correct the day, or take the line out.',
    );
  });

  it('but no name is called unknown while the list it should stand in has a fault of form', () => {
    expect(faults.filter((fault) => fault.startsWith('drums[1].place'))).toEqual([]);
    expect(
      afterSpoiling((document) => {
        document.drums[1].place = 'XNRO';
      }).faults,
    ).toContain('drums[1].place: there is no place XNRO. Did you mean XNOR?');
  });
});

describe('a document that is not a scenario', () => {
  it('tells a document that is no scenario so once, not field by field', () => {
    for (const document of [{}, { format: 'drumline-plan/1' }, { pilots: [] }]) {
      const parsed = parseScenario(document);
      expect(parsed.ok ? [] : parsed.faults.map(({ path }) => path)).toEqual(['format']);
    }
  });

  it('lists every field that is missing', () => {
    const parsed = parseScenario({ format: 'drumline-scenario/1' });
    expect(parsed.ok ? [] : ['format', ...parsed.faults.map(({ path }) => path)]).toEqual(
      Object.keys(tinyDocument()),
    );
  });

  it('text that is not JSON has one fault, with line and column', () => {
    const parsed = parseScenario('{\n  "title": "x",\n}');
    expect(parsed).toMatchObject({
      ok: false,
      faults: [{ path: 'line 2, column 15', problem: 'not JSON: a comma too many before }.' }],
    });
  });

  it('a list, a number or nothing is refused as a whole', () => {
    for (const value of [[], 7, null, undefined]) {
      const parsed = parseScenario(value);
      expect(parsed.ok ? [] : parsed.faults.map(({ path }) => path)).toEqual(['']);
    }
  });
});

describe('laws', () => {
  it('whatever one value is replaced by, the reader answers: the same document back, or at least one fault', () => {
    const paths = pathsIn(tinyDocument());
    fc.assert(
      fc.property(fc.constantFrom(...paths), fc.jsonValue({ maxDepth: 2 }), (path, value) => {
        const document = tinyDocument();
        const last = path.at(-1)!;
        path.slice(0, -1).reduce((inside, key) => inside[key], document)[last] = value;
        const parsed = parseScenario(JSON.stringify(document));
        if (parsed.ok) expect(parsed.scenario).toEqual(JSON.parse(JSON.stringify(document)));
        else expect(parsed.faults.length).toBeGreaterThan(0);
      }),
    );
  });

  it('taking any field out is a fault at that very path, unless it may be left out', () => {
    for (const path of pathsIn(tinyDocument()).filter((keys) => typeof keys.at(-1) === 'string')) {
      const document = tinyDocument();
      delete path.slice(0, -1).reduce((inside, key) => inside[key], document)[path.at(-1)!];
      const parsed = parseScenario(document);
      const faults = parsed.ok ? [] : parsed.faults;
      const mayBeLeftOut = /^(untilDate|held|pilot)$/.test(String(path.at(-1)));
      expect(faults.some((fault) => fault.path === printPath(path))).toBe(!mayBeLeftOut);
    }
  });
});

type Path = readonly (string | number)[];

/** Every place in a JSON value at which something stands. */
const pathsIn = (value: unknown, here: Path = []): Path[] =>
  typeof value !== 'object' || value === null
    ? [here]
    : [
        ...(here.length > 0 ? [here] : []),
        ...Object.entries(value).flatMap(([key, inner]) =>
          pathsIn(inner, [...here, Array.isArray(value) ? Number(key) : key]),
        ),
      ];
