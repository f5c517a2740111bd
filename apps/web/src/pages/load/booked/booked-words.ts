import { figure, inWords, stockInWords } from '../../../ui/qty.js';
import type { BookedLoad } from './booked-read.js';

/** "Booked, no drum on it yet. The bar shows 3 drums at 180 kg each beside what is booked." */
export const shownWords = ({ asked, drawn, planningKg }: BookedLoad): string => {
  const none = 'Booked, no drum on it yet';
  const booked = 'the bars show what is booked on it';
  if (drawn === 0 && asked.drums === 0) return `${none}: ${booked}`;
  if (drawn === 0) {
    const them = asked.drums === 1 ? '1 drum does' : `${inWords(asked.drums, 'drums')} do`;
    return `${none}: ${them} not go on it as booked, and none is drawn; ${booked}`;
  }
  const shown = `the bars show ${inWords(drawn, 'drums')} at ${inWords(planningKg, 'kg')} each beside what is booked`;
  return drawn === asked.drums
    ? `${none}: ${shown}`
    : `${none}: of ${inWords(asked.drums, 'drums')} only ${figure(drawn)} can go; ${shown}`;
};

/** "XHAS, up to 3 drums". */
export const landingWords = ({ place, drums }: BookedLoad['landings'][number]): string =>
  drums === 0 ? `${place}, none` : `${place}, up to ${inWords(drums, 'drums')}`;

/** What follows from the drums that are asked, said before they are added: drums, levels, cost, what is next. */
export const followsWords = (load: BookedLoad, currency: string): readonly string[] => [
  standWords(load),
  ...load.caches.map(
    ({ place, minimumLitres, withIt, without }) =>
      `${place} is lowest at ${stockInWords(withIt.lowestLitres)} with them, ${stockInWords(without.lowestLitres)} without; minimum ${inWords(minimumLitres, 'L')}.`,
  ),
  ...costWords(load, currency),
];

/** "24 fit drums stand free at XMER: 0523, 0524 and 0525 go, the oldest first; 21 stay free." */
export const standWords = ({ stand, asked, faults }: BookedLoad): string => {
  const { base, free, take, toFill } = stand;
  const stands = `${figure(free)} fit ${free === 1 ? 'drum stands' : 'drums stand'} free at ${base}`;
  if (asked.drums === 0 || faults.length > 0) return `${stands}.`;
  const fill =
    toFill === 0 ? '' : ` ${inWords(toFill, 'drums')} ${toFill === 1 ? 'is' : 'are'} still to be filled.`;
  if (take.length === 0) return `${stands}.${fill}`;
  const go = `${take.join(', ')} ${take.length === 1 ? 'goes' : 'go'}, the oldest first; ${figure(free - take.length)} stay free`;
  return `${stands}: ${go}.${fill}`;
};

const costWords = ({ cost }: BookedLoad, currency: string): readonly string[] => {
  if (cost === null) return [];
  const money = (cents: number) => inWords(cents / 100, currency);
  const perLitre = cost.perLitre === null ? '' : `, ${inWords(cost.perLitre / 100, `${currency}/L`, 2)}`;
  return [
    `${money(cost.total)}${perLitre}: fuel ${money(cost.fuel)}, handling ${money(cost.handling)}, flight nothing, as it flies anyway.`,
  ];
};
