import { pounds } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import { exampleLine, exampleRequest } from '../example-flight.js';
import { checkLoad } from '../named-load/check-load.js';
import { exampleLoad, standing } from '../named-load/example-load.js';
import type { NamedLoad } from '../named-load/named-load.js';
import { ifSoft } from './fallbacks.js';
import { doNotGo, drumsThatGo } from './soft-words.js';

const places = ['BASE', 'LOR', 'GAN', 'BASE'];
const positions = ['R3R', 'R1L', 'R1R', 'R2L', 'R2R', 'R3L'];
/** So many drums for each stop, 0569 the first. */
const carrying = (forLor: number, forGan: number): NamedLoad =>
  exampleLoad(
    places,
    positions
      .slice(0, forLor + forGan)
      .map((position, i) =>
        standing(`${String(569 + i).padStart(4, '0')}`, position, 20, i < forLor ? 0 : 1),
      ),
  );

/** The same where the strip takes that much less than the load lands with once it is soft; null: it is closed then. */
const overWhenSoft = (load: NamedLoad, leg: number, overLb: number | null): NamedLoad => {
  const place = places[leg + 1]!;
  const landingLb = checkLoad(load).legs[leg]!.landingLb;
  const limit =
    overLb === null
      ? { ...exampleLine, place, whenSoft: 'closed' as const }
      : {
          ...exampleLine,
          place,
          landingLb: pounds(landingLb - overLb + 450),
          whenSoft: { takeoffLessLb: pounds(0), landingLessLb: pounds(450) },
        };
  const { legs, ...request } = exampleRequest(places);
  const at = <End extends (typeof legs)[number]['to']>(end: End) =>
    end.place.code === place ? { ...end, limit } : end;
  const limited = legs.map((each) => ({ ...each, from: at(each.from), to: at(each.to) }));
  return exampleLoad(places, load.drums, { ...request, legs: limited });
};

describe('a flight with two stops, one of them soft', () => {
  it('the first: its one drum stays, and the four for the other are told as taken, with the weight they land with', () => {
    const load = overWhenSoft(carrying(1, 4), 0, 300);
    const soft = ifSoft(load, 0);
    expect(soft).toMatchObject({ take: 0, leave: ['0569'] });
    const without = { ...load, drums: load.drums.slice(1) };
    expect(soft.landsLb).toBe(checkLoad(without).legs[0]!.landingLb);
    const lands = soft.landsLb!.toLocaleString('en-GB');
    expect(soft.words).toBe(
      `If LOR is soft: take 4 (all for GAN), leave 0569 here. Lands LOR with ${lands} lb.`,
    );
  });

  it('the second: what is for the first goes with what the second still takes', () => {
    const soft = ifSoft(overWhenSoft(carrying(1, 4), 1, 300), 1);
    expect(soft).toMatchObject({ take: 3, leave: ['0573'] });
    expect(soft.words).toMatch(
      /^If GAN is soft: take 4 \(1 for LOR, 3 for GAN\), leave 0573 here\. Lands GAN with [\d,]+ lb\.$/,
    );
  });

  it('three for each: only drums of the soft one stay', () => {
    const load = carrying(3, 3);
    expect(ifSoft(overWhenSoft(load, 0, 500), 0).words).toMatch(
      /^If LOR is soft: take 4 \(1 for LOR, 3 for GAN\), leave 0570 and 0571 here\. Lands LOR with /,
    );
    expect(ifSoft(overWhenSoft(load, 1, 1000), 1).words).toMatch(
      /^If GAN is soft: take 3 \(all for LOR\), leave 0572, 0573 and 0574 here\. Lands GAN with /,
    );
    expect(ifSoft(overWhenSoft(load, 0, -1), 0).words).toMatch(
      /^If LOR is soft: take all 6 drums.*\. Lands LOR/,
    );
  });

  it('not even without its drums: not by this version, and the other stop is not given up with it', () => {
    for (const load of [overWhenSoft(carrying(1, 4), 0, 3000), overWhenSoft(carrying(1, 4), 0, null)])
      expect(ifSoft(load, 0)).toMatchObject({
        take: null,
        leave: ['0569'],
        landsLb: null,
        words: 'If LOR is soft: do not go by this version; 4 drums for GAN need another, without LOR.',
      });
    expect(ifSoft(overWhenSoft(carrying(1, 4), 1, null), 1).words).toBe(
      'If GAN is soft: do not go by this version; 1 drum for LOR needs another, without GAN.',
    );
  });

  it('where every drum would stay there is nothing to fly for', () => {
    const one = overWhenSoft(carrying(1, 0), 0, 300);
    expect(ifSoft(one, 0)).toMatchObject({ take: null, words: 'If LOR is soft: do not go.' });
  });
});

it('how many go, and which they are for', () => {
  const stops = (lor: number, gan: number) => [
    { place: 'LOR', drums: lor },
    { place: 'GAN', drums: gan },
  ];
  expect(drumsThatGo([{ place: 'LOR', drums: 4 }])).toBe('4');
  expect(drumsThatGo(stops(0, 4))).toBe('4 (all for GAN)');
  expect(drumsThatGo(stops(1, 0))).toBe('1 (for LOR)');
  expect(drumsThatGo(stops(1, 3))).toBe('4 (1 for LOR, 3 for GAN)');
  expect(doNotGo('LOR', stops(0, 0).slice(1))).toBe('do not go');
});
