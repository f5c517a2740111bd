import { printNumber } from '@drumline/units';
import type { Drawn } from './movement.js';
import { byHappened } from './order.js';
import { raise } from './raise.js';
import type { Raised } from './raised.js';

/** How near in time two draws have to be to look alike. Common practice, no source. */
const nearMs = 2 * 3_600_000;

/**
 * Draws with ids of their own that may be one: same place, same litres, same person or aircraft, near in time; drums of
 * one report are not. Both count until a person corrects one.
 */
export function lookAlikeDraws(draws: readonly Drawn[]): readonly Raised[] {
  const raised: Raised[] = [];
  for (const alike of sameDraws(draws).values()) {
    const ordered = [...alike].sort(byHappened);
    ordered.forEach((draw, index) => {
      for (let next = index + 1; next < ordered.length; next++) {
        const other = ordered[next]!;
        if (Date.parse(other.happenedAt) - Date.parse(draw.happenedAt) > nearMs) break;
        if (isOneReport(draw, other)) continue;
        if (draw.by === other.by || draw.into === other.into) raised.push(looksAlike(draw, other));
      }
    });
  }
  return raised;
}

/** One draw out of several drums: one person writes each drum down in the same moment. */
const isOneReport = (draw: Drawn, other: Drawn): boolean =>
  draw.by === other.by && draw.writtenAt === other.writtenAt && draw.drum !== other.drum;

function sameDraws(draws: readonly Drawn[]): ReadonlyMap<string, Drawn[]> {
  const same = new Map<string, Drawn[]>();
  for (const draw of draws) {
    const key = `${draw.millilitres} ${draw.place}`;
    const there = same.get(key);
    if (there) there.push(draw);
    else same.set(key, [draw]);
  }
  return same;
}

function looksAlike(draw: Drawn, other: Drawn): Raised {
  return raise('draws look alike', [draw, other], {
    place: draw.place,
    what: `${draw.by} and ${other.by} each report ${printNumber(draw.millilitres / 1000)} L drawn at ${draw.place} within two hours.`,
    whatNext: 'Ask whether it was one draw; if so, correct one of the two.',
  });
}
