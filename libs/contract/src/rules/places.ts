import { each, type Rule } from './rule.js';

/** Pads have no runway, everything else has one; bases have fuel; somebody may land at every strip. */
export const placeRules: readonly Rule[] = [
  each('places', [], function* (place) {
    if (place.kind === 'pad' && place.runway !== null)
      yield [['runway'], `${place.code} is a pad and has a runway.`, 'Write null, or make it a strip.'];
    if (place.kind === 'pad' && place.stripClass !== null)
      yield [
        ['stripClass'],
        `${place.code} is a pad and has a strip class.`,
        'Write null, or make it a strip.',
      ];
    if (place.kind !== 'pad' && place.runway === null)
      yield [
        ['runway'],
        `${place.code} is a ${place.kind} without a runway.`,
        'Add the runway, or make it a pad.',
      ];
    if (place.kind !== 'pad' && place.stripClass === null)
      yield [['stripClass'], `${place.code} is a ${place.kind} without a strip class.`, 'Give 1, 2, 3 or 4.'];
  }),
  each('places', ['stripLimits'], function* (place, { stripLimits }) {
    if (place.kind !== 'pad' && !stripLimits.some((limit) => limit.place === place.code))
      yield [
        [],
        `no type has strip limits at ${place.code}.`,
        'Add a line to stripLimits, or make it a pad.',
      ];
  }),
  each('places', ['bases'], function* (place, { bases }) {
    if (place.kind === 'base' && !bases.some((base) => base.place === place.code))
      yield [
        [],
        `${place.code} is a base without a line in bases.`,
        'Add its bulk fuel and filling to bases.',
      ];
  }),
  each('bases', ['places'], function* (base, { places }) {
    const place = places.find(({ code }) => code === base.place);
    if (place !== undefined && place.kind !== 'base')
      yield [
        ['place'],
        `${base.place} is a ${place.kind}, not a base.`,
        'Correct the code, or its kind in places.',
      ];
  }),
  each('stripLimits', ['places'], function* (limit, { places }) {
    const place = places.find(({ code }) => code === limit.place);
    if (place?.kind === 'pad')
      yield [
        ['place'],
        `${limit.place} is a pad; aeroplanes do not land there.`,
        'Remove the line, or make it a strip.',
      ];
  }),
  each('notices', [], function* (notice) {
    if (notice.places.length === 0 && notice.circle === undefined)
      yield [[], `notice ${notice.id} names no place and no circle.`, 'Add what it closes.'];
  }),
  each('distances', [], function* ({ between: [from, to] }) {
    if (from === to) yield [['between'], `${from} is at no distance from itself.`, 'Correct one of the two.'];
  }),
  each('winds', [], function* ({ from, to }) {
    if (from === to) yield [['to'], `the leg goes from ${from} to ${from}.`, 'Correct one of the two.'];
  }),
];
