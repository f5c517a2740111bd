import { each, type Rule } from '../rule.js';

/** Tails and strips that nobody can fly. */
export const crewDoubts: readonly Rule[] = [
  each('aircraft', ['pilots'], function* ({ tail, type }, { pilots }) {
    if (!pilots.some(({ types }) => types.includes(type)))
      yield [
        ['type'],
        `no pilot flies type ${type}, so that ${tail} stays on the ground.`,
        'Look at the types of the pilots.',
      ];
  }),
  each('places', ['pilots'], function* ({ code, stripClass }, { pilots }) {
    if (stripClass !== null && !pilots.some(({ stripClasses }) => stripClasses.includes(stripClass)))
      yield [
        ['stripClass'],
        `no pilot is cleared for class ${stripClass}, so that nobody lands at ${code}.`,
        'Look at the classes of the pilots.',
      ];
  }),
];
