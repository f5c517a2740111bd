import { printedLbOf } from '../printed-weights.js';
import { apartOf, lbWords, namesWords, type SlipFinder, twoDigitsSwapped } from './slip.js';

/** The two totals have the same digits, two of them changed over; or one weight of the column has. */
export const digitsSwapped: SlipFinder = (question) => {
  const swapped = twoDigitsSwapped(question.sheet, question.typed);
  if (swapped)
    return [
      {
        kind: 'digits swapped',
        title: 'Two digits changed over',
        words: `The two figures have the same digits, with ${swapped[0]} and ${swapped[1]} changed over. Either may be the slip. Read both again where they came from.`,
      },
    ];
  // A swap moves a figure by nine times something: no need to look further.
  const apart = apartOf(question);
  if (apart % 9 !== 0) return [];
  const change = question.typed - question.sheet;
  const items = question.items.filter(({ kg }) => {
    const lb = printedLbOf(kg);
    return twoDigitsSwapped(lb, lb + change) !== null;
  });
  return items.length === 0
    ? []
    : [
        {
          kind: 'digits swapped',
          title: 'Two digits changed over in one weight',
          words: `${lbWords(apart)} apart. Two digits of the weight of ${namesWords(items)} may be changed over in one of the sums.`,
        },
      ];
};

/** One digit misread moves a total by 1 to 9 times a power of ten; so do two of a total changed over, which are told as that. */
export const oneDigit: SlipFinder = (question) =>
  /^[1-9]0*$/.test(String(apartOf(question))) && !twoDigitsSwapped(question.sheet, question.typed)
    ? [
        {
          kind: 'one digit',
          title: 'One digit different',
          words: `${lbWords(apartOf(question))} apart: one digit, in a total or in a weight that was added, may be misread.`,
        },
      ]
    : [];

/** A digit too many or too few makes one figure about ten times the other. */
export const tenTimes: SlipFinder = ({ sheet, typed }) => {
  const [less, more] = [Math.min(sheet, typed), Math.max(sheet, typed)];
  return less > 0 && Math.abs(more - 10 * less) < 10
    ? [
        {
          kind: 'ten times',
          title: 'A digit too many or too few',
          words: 'One figure looks ten times the other.',
        },
      ]
    : [];
};
