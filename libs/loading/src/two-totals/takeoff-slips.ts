import { itemTotals, roundingRoomLb } from './sheet-item.js';
import { apartOf, lbWords, type Slip, type SlipFinder, type SlipQuestion } from './slip.js';

// What a take-off weight is made of, and a load is not: the aeroplane, its fuel, and the load as a whole.

/** The taxi fuel lies between ramp weight and take-off weight. */
export const beforeTaxi: SlipFinder = (question) =>
  question.of === 'take-off weight' && question.taxiLb > 0 && isNear(question, question.taxiLb)
    ? [
        {
          kind: 'before taxi',
          title: 'Before taxi or after',
          words: `${lbWords(apartOf(question))} apart. The taxi fuel is ${lbWords(question.taxiLb)}. One figure may be at start-up, the other at take-off.`,
        },
      ]
    : [];

/** The take-off weight without the load, or with it twice. A single weight aboard is told by its name elsewhere. */
export const loadLeftOut: SlipFinder = (question) => {
  const { of, items } = question;
  if (of !== 'take-off weight' || items.length < 2) return [];
  const { lb } = itemTotals(items);
  return isNear(question, lb, Math.max(1, roundingRoomLb(items)))
    ? [wholePart(question, 'load left out', `The whole load is ${lbWords(lb)}`)]
    : [];
};

/** The take-off weight without the fuel, or with it twice: all of it, or what is left of it after taxi. */
export const fuelLeftOut: SlipFinder = (question) => {
  const { of, fuelLb, taxiLb } = question;
  if (of !== 'take-off weight' || fuelLb === 0) return [];
  if (isNear(question, fuelLb - taxiLb))
    return [wholePart(question, 'fuel left out', `The fuel at take-off is ${lbWords(fuelLb - taxiLb)}`)];
  return isNear(question, fuelLb)
    ? [wholePart(question, 'fuel left out', `The fuel at start-up is ${lbWords(fuelLb)}`)]
    : [];
};

/** What the aeroplane weighs at the end of the leg, in the box for its take-off. */
export const landingWeight: SlipFinder = (question) =>
  isShortBy(question, question.tripLb)
    ? [
        {
          kind: 'landing weight',
          title: 'Landing weight for take-off weight',
          words: `${lbWords(apartOf(question))} apart. The fuel from take-off to landing is ${lbWords(question.tripLb)}. One figure may be the landing weight.`,
        },
      ]
    : [];

/** Load and fuel alone. */
export const operatingLeftOut: SlipFinder = (question) =>
  isShortBy(question, question.operatingLb)
    ? [
        {
          kind: 'operating weight left out',
          title: 'The operating weight left out',
          words: `${lbWords(apartOf(question))} apart. The aeroplane with its crew is ${lbWords(question.operatingLb)}. One figure may be the load and the fuel alone.`,
        },
      ]
    : [];

/** Of take-off weights: the other figure is so much less. 0: that part is not known. */
const isShortBy = (question: SlipQuestion, lb: number): boolean =>
  question.of === 'take-off weight' && lb > 0 && question.typed < question.sheet && isNear(question, lb);

const isNear = (question: SlipQuestion, lb: number, roomLb = 1): boolean =>
  Math.abs(apartOf(question) - lb) <= roomLb;

const wholePart = (question: SlipQuestion, kind: 'load left out' | 'fuel left out', words: string): Slip => {
  const what = kind === 'load left out' ? 'load' : 'fuel';
  const short = question.typed < question.sheet;
  return {
    kind,
    title: short ? `The ${what} left out` : `The ${what} counted twice`,
    words: `${lbWords(apartOf(question))} apart. ${words}. One figure may ${short ? `be without the ${what}` : `have the ${what} twice`}.`,
  };
};
