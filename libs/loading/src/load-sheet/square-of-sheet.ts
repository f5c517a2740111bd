import { kilograms } from '@drumline/units';
import type { NamedLoad } from '../named-load/named-load.js';
import type { WeighedLeg } from '../named-load/weigh-load.js';
import { printedLb } from '../printed-weights.js';
import type { SheetDrum, SheetFlight, SheetLeg } from './load-sheet.js';
import { limitWords } from './sheet-words.js';
import type { Square, SquareLeg } from './square.js';

/** The parts of a sheet that its code square holds. */
export function squareOf(sheet: {
  readonly flight: SheetFlight;
  readonly load: NamedLoad;
  readonly drums: readonly SheetDrum[];
  readonly legs: readonly SheetLeg[];
  readonly weighed: readonly WeighedLeg[];
}): Square {
  const { flight, load, drums, legs, weighed } = sheet;
  const capitals = (text: string) => text.toUpperCase();
  return {
    flight: capitals(flight.id),
    version: flight.version,
    aircraft: capitals(flight.aircraft),
    type: capitals(load.request.type.id),
    date: flight.date,
    departs: flight.departs,
    legs: legs.map((leg, index) => squareLeg(leg, weighed[index]!)),
    drums: drums.map(({ number, position, batch, grossKg, lb, offAfterLeg }) => ({
      number: capitals(number),
      position: capitals(position),
      batch: capitals(batch),
      grossKg: kilograms(Math.round(grossKg * 10) / 10),
      lb,
      offAfterLeg,
    })),
    cargo: load.cargo.map(({ name, place, weightLb, firstLeg, lastLeg }) => ({
      name: capitals(name),
      place: capitals(place ?? ''),
      lb: printedLb(weightLb),
      firstLeg,
      lastLeg,
    })),
    ifSoft: legs.flatMap(({ goBack }, leg) =>
      goBack.ifSoft === null
        ? []
        : [{ leg, take: goBack.ifSoft.take, leave: goBack.ifSoft.leave.map(capitals) }],
    ),
  };
}

function squareLeg(leg: SheetLeg, weighed: WeighedLeg): SquareLeg {
  const nearest = weighed.limits[0]!;
  return {
    from: leg.from,
    to: leg.to,
    distanceNm: leg.distanceNm,
    surface: leg.surface,
    loadLb: weighed.loadLb,
    zeroFuelLb: weighed.zeroFuelLb,
    takeoffLb: weighed.takeoffLb,
    landingLb: weighed.landingLb,
    nearest: limitWords(nearest).toUpperCase(),
    spareLb: nearest.spareLb,
    leaveLimitLb: leg.goBack.leaveAgain?.limitLb ?? null,
    tailwindLimitKt: leg.goBack.tailwindLimitKt,
    latestLeave: leg.goBack.latestLeave.at,
    committalPoint: leg.goBack.committalPoint?.toUpperCase() ?? null,
  };
}
