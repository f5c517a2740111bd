import { kilogramsFromPounds, pounds } from '@drumline/units';
import { configurationOf } from '../aircraft-type.js';
import { dangerousDrums, type GoodsDrum, goodsOnLeg } from '../dangerous-goods/goods-aboard.js';
import { particulars, usualParticulars } from '../dangerous-goods/particulars.js';
import { passengersAndDrums } from '../dangerous-goods/passengers-and-drums.js';
import { goBackLines } from '../go-back/go-back-lines.js';
import { checkLoad } from '../named-load/check-load.js';
import { notInBookWords } from '../named-load/drum-in-no-book.js';
import { heldAboardWords } from '../named-load/held-aboard.js';
import { isAboard, type NamedLoad, type StandingDrumAboard } from '../named-load/named-load.js';
import type { WeighedLeg } from '../named-load/weigh-load.js';
import { printedLb, printedLbOf } from '../printed-weights.js';
import { itemTotals, type SheetItem } from '../two-totals/sheet-item.js';
import type { LoadSheet, LoadSheetRequest, SheetDrum, SheetLeg, SheetTotals } from './load-sheet.js';
import { replacesWords } from './sheet-names.js';
import { sheetTieDown } from './sheet-tie-down.js';
import {
  assumptionWords,
  bindsWords,
  fuelWords,
  heardWords,
  plannedDrumsLb,
  sheetCautions,
} from './sheet-words.js';
import { type SquareOf, squareText } from './square-text.js';
import { sheetCargo, weightRows } from './weight-rows.js';

/**
 * The load sheet of a flight with named drums: pure data, from which paper and screens are drawn. Whole pounds that add
 * up as printed; limits and balance hold by the printed and by the exact figures, or `faults` says what does not.
 */
export function makeLoadSheet(request: LoadSheetRequest): LoadSheet {
  const { flight, load } = request;
  const report = checkLoad(load);
  const legs = report.legs.map((_, index) => sheetLeg(request, index, report.legs));
  const refused = legs.flatMap(({ passengersAndDrums: rule }) => (rule.allowed ? [] : [rule.words]));
  const standing = [...load.drums].sort(frontToBack(load));
  const faults = [...report.faults, ...refused];
  const sheet: SquareOf = {
    format: 'drumline-sheet/1',
    flight,
    route: [load.request.legs[0]!.from.place.code, ...legs.map(({ to }) => to)],
    drums: standing.map((drum) => sheetDrum(load, drum)),
    cargo: load.cargo.map(sheetCargo),
    legs,
    notInBookWords: notInBookWords(standing),
    heldWords: heldAboardWords(standing),
    fuelWords: fuelWords(load, report.legs),
    tieDown: sheetTieDown(request),
    particularsMissing: request.goods.set === null ? particularsMissing : null,
    toleranceLb: request.toleranceLb,
    holds: faults.length === 0,
    faults,
    assumptions: [
      ...(request.surfacesHeard ? [heardWords(request.surfacesHeard)] : []),
      assumptionWords(load, request.bookDensityKgPerLitre),
    ].join(' '),
    cautions: sheetCautions,
  };
  const { text: square, checkCode } = squareText(sheet);
  return { ...sheet, replacesWords: replacesWords(flight, checkCode), checkCode, square };
}

const particularsMissing =
  'A usual set of fields: the operator has not given its own. Set-up, Dangerous goods.';

function sheetLeg(request: LoadSheetRequest, index: number, weighed: readonly WeighedLeg[]): SheetLeg {
  const { flight, load, landingHours, alternates, goods } = request;
  const leg = load.request.legs[index]!;
  const day = { ...landingHours, date: flight.date, isUnderWay: request.isUnderWay ?? false };
  const aboard = goodsOnLeg([...load.drums.map((drum) => asGoods(load, drum)), ...goods.others], index);
  const [from, to] = [leg.from.place.code, leg.to.place.code];
  const rule = passengersAndDrums(
    {
      from,
      to,
      date: flight.date,
      aircraft: flight.aircraft,
      passengers: leg.passengers,
      drums: dangerousDrums(aboard),
    },
    load.request.passengerRule,
    { number: goods.citedApproval, onFile: goods.approvalsOnFile },
  );
  const approval = rule.allowed && rule.by !== 'nothing to rule on' ? rule.by.number : null;
  return {
    from,
    to,
    distanceNm: leg.distanceNm,
    surface: leg.to.surface,
    passengers: leg.passengers,
    rows: weightRows(load, index, weighed),
    totals: totalsOf(load, index, weighed[index]!),
    // Every limit leaves its spare under one and the same load: the least of them is what may still be added.
    allowedTakeoffLb: pounds(weighed[index]!.takeoffLb + weighed[index]!.limits[0]!.spareLb),
    binds: bindsWords(load, index, weighed[index]!, request.surfacesHeard),
    goBack: goBackLines(load, index, day, alternates[index] ?? []),
    particulars: particulars(goods.set ?? usualParticulars, aboard, {
      passengers: leg.passengers,
      date: flight.date,
      approval,
    }),
    passengersAndDrums: rule,
  };
}

function totalsOf(load: NamedLoad, index: number, weighed: WeighedLeg): SheetTotals {
  const drums = load.drums.filter(({ offAfterLeg }) => index <= offAfterLeg);
  const cargo = load.cargo.filter((one) => isAboard(one, index));
  const items: SheetItem[] = [
    ...drums.map(({ number, position, grossKg, tareKg }) => ({
      name: `${number} in ${position}`,
      kg: grossKg,
      tareKg,
    })),
    ...cargo.map(({ name, weightLb }) => ({ name, kg: kilogramsFromPounds(weightLb), tareKg: null })),
  ];
  const { kg, roundingWords } = itemTotals(items);
  const cargoLb = cargo.reduce((sum, { weightLb }) => sum + printedLb(weightLb), 0);
  const plannedLoadLb = pounds(plannedDrumsLb(drums.length, load.request.drum.grossKg) + cargoLb);
  return {
    items,
    loadKg: kg,
    loadLb: weighed.loadLb,
    takeoffLb: weighed.takeoffLb,
    plannedLoadLb,
    plannedTakeoffLb: pounds(weighed.takeoffLb - weighed.loadLb + plannedLoadLb),
    fuelLb: weighed.fuelLb,
    taxiFuelLb: weighed.taxiLb,
    tripFuelLb: weighed.tripLb,
    operatingLb: weighed.operatingLb,
    roundingWords,
  };
}

function sheetDrum({ request }: NamedLoad, drum: StandingDrumAboard): SheetDrum {
  const { number, batch, position, grossKg, litres, offAfterLeg, held } = drum;
  const { drumPositions } = configurationOf(request.type, request.configuration);
  const place = drumPositions.find(({ id }) => id === position);
  if (!place) throw new Error(`type ${request.type.id} has no drum position ${position}`);
  const leaveAt = request.legs[offAfterLeg]!.to.place.code;
  return {
    position,
    armIn: place.armIn,
    number,
    batch,
    grossKg,
    lb: printedLbOf(grossKg),
    litres,
    leaveAt,
    offAfterLeg,
    onHold: held !== undefined,
  };
}

const asGoods = (
  { request }: NamedLoad,
  { number, litres, position, offAfterLeg }: StandingDrumAboard,
): GoodsDrum => ({
  number,
  content: litres > 0 ? 'fuel' : 'uncleaned empty',
  litres,
  position,
  fromLeg: 0,
  lastLeg: offAfterLeg,
  unloadAt: request.legs[offAfterLeg]!.to.place.code,
});

function frontToBack({ request }: NamedLoad) {
  const { drumPositions } = configurationOf(request.type, request.configuration);
  const order = new Map(
    [...drumPositions].sort((a, b) => a.armIn - b.armIn).map(({ id }, index) => [id, index]),
  );
  return (a: StandingDrumAboard, b: StandingDrumAboard) =>
    (order.get(a.position) ?? 0) - (order.get(b.position) ?? 0);
}
