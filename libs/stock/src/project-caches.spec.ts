import { litres } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import { exampleCache, exampleOutlook, partDrum, sealedDrum } from './example-stock.js';
import { projectCaches, type StockOutlook, stockCourse } from './project-caches.js';

const [monday, tuesday, wednesday] = ['2027-06-14', '2027-06-15', '2027-06-16'] as const;
const draw = (date: string, amount: number) => ({
  date,
  place: 'STRIP',
  litres: litres(amount),
  for: 'survey',
});

const project = (outlook: StockOutlook) => {
  const [strip, pad] = projectCaches(outlook);
  return { strip: strip!, pad: pad! };
};

describe('book projection', () => {
  it('book projection: falls below zero and says by how much, and what was asked beyond the drawable is unmet', () => {
    const { strip } = project(
      exampleOutlook([sealedDrum('1', 'new', 'STRIP')], { draws: [draw(monday, 150), draw(tuesday, 80)] }),
    );
    expect(strip.book).toEqual([200, 50, -30, -30]);
    expect(strip.unmet).toEqual([0, 0, 30, 0]);
  });

  it('book projection: a landing after a shortage is not drawn for the day before', () => {
    const { strip } = project(
      exampleOutlook([], {
        draws: [draw(monday, 100), draw(wednesday, 250)],
        landings: [{ date: tuesday, place: 'STRIP', litres: litres(400), retestDue: null }],
      }),
    );
    expect(strip.book).toEqual([0, -100, 300, 50]);
    expect(strip.unmet).toEqual([0, 100, 0, 0]);
  });

  it('medevac reserve: a routine draw stops at the reserve, and the level still shows the whole draw', () => {
    const { strip } = project(
      exampleOutlook([sealedDrum('1', 'new', 'STRIP'), sealedDrum('2', 'new', 'STRIP')], {
        caches: [exampleCache('STRIP', { medevacReserveLitres: litres(200) }), exampleCache('PAD')],
        draws: [draw(monday, 250)],
      }),
    );
    expect(strip.unmet).toEqual([0, 50, 0, 0]);
    expect(strip.usable).toEqual([400, 150, 150, 150]);
  });

  it('run-out: the first level at or below zero', () => {
    const { strip } = project(
      exampleOutlook([sealedDrum('1', 'new', 'STRIP')], { draws: [draw(monday, 199), draw(tuesday, 1)] }),
    );
    expect([strip.belowMinimumDay, strip.belowCriticalDay, strip.runOutDay]).toEqual([0, 1, 2]);
  });

  it('days of cover: usable over the mean draw, quiet days included', () => {
    const drums = [sealedDrum('1', 'new', 'STRIP'), sealedDrum('2', 'new', 'STRIP')];
    const { strip, pad } = project(
      exampleOutlook(drums, { draws: [draw(monday, 150), draw(wednesday, 150)] }),
    );
    expect(strip.daysOfCover).toBe(4);
    expect(pad.daysOfCover).toBeNull();
  });
});

describe('order of a day', () => {
  it('order of a day: what lands in the morning can be slung and drawn the same day', () => {
    const { strip, pad } = project(
      exampleOutlook([], {
        landings: [{ date: monday, place: 'STRIP', litres: litres(600), retestDue: null }],
        slings: [{ date: monday, from: 'STRIP', to: 'PAD', drums: 2 }],
        draws: [draw(monday, 200)],
      }),
    );
    expect(strip.usable[1]).toBe(0);
    expect(strip.unmet[1]).toBe(0);
    expect(pad.usable[1]).toBe(400);
  });

  it('capacity: counts the drums after landings and before slings out, held and past-retest ones included', () => {
    const held = {
      ...sealedDrum('1', 'new', 'STRIP'),
      held: { reason: 'seal', by: 'pilot', at: '2027-06-14T05:00Z' },
    };
    const { strip } = project(
      exampleOutlook([held, sealedDrum('2', 'old', 'STRIP')], {
        landings: [{ date: wednesday, place: 'STRIP', litres: litres(400), retestDue: null }],
        slings: [{ date: wednesday, from: 'STRIP', to: 'PAD', drums: 1 }],
      }),
    );
    expect(strip.standing).toEqual([400, 400, 400, 800]);
    expect(strip.usable).toEqual([200, 200, 200, 200]);
  });
});

describe('retest date', () => {
  it('retest date: a drum is fit on its retest date and not from the next day', () => {
    const { strip } = project(exampleOutlook([sealedDrum('1', 'old', 'STRIP')]));
    expect(strip.usable).toEqual([200, 200, 200, 0]);
    expect(strip.pastRetest).toEqual([0, 0, 0, 200]);
    expect(strip.agedOut).toEqual([
      { place: 'STRIP', number: '1', litres: 200, retestDue: tuesday, dueDay: 2 },
    ]);
  });

  it('oldest fit first: the part-used drum, then the drum due first, so that least is lost to its retest date', () => {
    const drums = [
      sealedDrum('1', 'new', 'STRIP'),
      sealedDrum('2', 'old', 'STRIP'),
      partDrum('3', 'new', 'STRIP', 50),
    ];
    const { strip } = project(exampleOutlook(drums, { draws: [draw(tuesday, 150)] }));
    expect(strip.agedOut.map(({ number, litres }) => [number, litres])).toEqual([['2', 100]]);
    expect(strip.usable[3]).toBe(200);
  });

  it('retest date: a drum past it at the opening is in the book and not in usable', () => {
    const late = exampleOutlook([sealedDrum('1', 'old', 'STRIP')], { dates: [wednesday] });
    expect(project(late).strip).toMatchObject({ book: [200, 200], usable: [0, 0], agedOut: [] });
  });
});

describe('slings', () => {
  it('oldest fit first: a sling takes sealed drums, and they keep their retest date at the pad', () => {
    const drums = [
      partDrum('1', 'old', 'STRIP', 80),
      sealedDrum('2', 'new', 'STRIP'),
      sealedDrum('3', 'old', 'STRIP'),
    ];
    const slings = [{ date: monday, from: 'STRIP', to: 'PAD', drums: 1 }];
    const { strip, pad } = project(exampleOutlook(drums, { slings }));
    expect(pad.agedOut.map(({ number }) => number)).toEqual(['3']);
    expect(pad.usable).toEqual([0, 200, 200, 0]);
    expect(strip.usable).toEqual([480, 280, 280, 200]);
  });

  it('a sling brings no more than stands sealed at the strip, and says how many drums are short', () => {
    const drums = [sealedDrum('1', 'new', 'STRIP'), partDrum('2', 'new', 'STRIP', 150)];
    const slings = [{ date: monday, from: 'STRIP', to: 'PAD', drums: 3 }];
    const { strip, pad } = project(exampleOutlook(drums, { slings }));
    expect(strip.slingShortDrums).toEqual([0, 2, 0, 0]);
    expect([strip.book[1], pad.book[1]]).toEqual([150, 200]);
  });

  // The reserve of 400 L stands there in two drums, but 320 L of it have been asked for: the level is 80 L.
  const owed = {
    caches: [exampleCache('STRIP', { medevacReserveLitres: litres(400) }), exampleCache('PAD')],
    draws: [draw(monday, 320)],
    slings: [{ date: tuesday, from: 'STRIP', to: 'PAD', drums: 2 }],
  };
  const twoDrums = [sealedDrum('1', 'new', 'STRIP'), sealedDrum('2', 'new', 'STRIP')];

  it('a sling takes no litre that a draw has been short of already: 80 L on the level are no drum', () => {
    const { strip, pad } = project(exampleOutlook(twoDrums, owed));
    expect(strip.usable).toEqual([400, 80, 80, 80]);
    expect(pad.usable).toEqual([0, 0, 0, 0]);
    expect(strip.slingShortDrums).toEqual([0, 0, 2, 0]);
  });

  it('says of each sling what it takes along', () => {
    const slings = [...owed.slings, { date: tuesday, from: 'BASE', to: 'PAD', drums: 2 }];
    const drums = [...twoDrums, sealedDrum('3', 'new', 'STRIP')];
    const { slingLoads } = stockCourse(exampleOutlook(drums, { ...owed, slings }));
    expect([...slingLoads.values()]).toEqual([
      { drums: 1, litres: 200 },
      { drums: 2, litres: 400 },
    ]);
  });

  it('a sling from a base brings full fresh drums', () => {
    const slings = [{ date: tuesday, from: 'BASE', to: 'PAD', drums: 2 }];
    expect(project(exampleOutlook([], { slings })).pad.slungIn).toEqual([0, 0, 400, 0]);
  });
});

describe('a count below the book', () => {
  it('usable stock: the missing litres stay in the book and are never drawn', () => {
    const drums = [sealedDrum('1', 'new', 'STRIP'), sealedDrum('2', 'new', 'STRIP')];
    const outlook = exampleOutlook(drums, { draws: [draw(monday, 350)] });
    const count = {
      place: 'STRIP',
      at: '2027-06-14T05:00Z',
      litres: litres(300),
      openDrums: 0,
      by: 'helper',
      seenFrom: 'ground' as const,
    };
    const { strip } = project({ ...outlook, picture: { ...outlook.picture, counts: [count] } });
    expect(strip.usable).toEqual([300, -50, -50, -50]);
    expect(strip.book).toEqual([400, 50, 50, 50]);
    expect(strip.unmet).toEqual([0, 50, 0, 0]);
  });
});
