import { drumDoubts, placeIn } from './find.js';
import { LineFault, missing, movement, type Reader } from './sheet.js';
import { toldBy } from './tail.js';

/** "held 0575 at 0810 because seal broken", and "rejected", before pumping: marked X. */
const readHeld =
  (reasonOf: (why: string) => string, word: string): Reader =>
  (parted, sheet) => {
    const told = toldBy(parted, sheet, null);
    const drums = parted.rest.slice(1);
    if (drums.length === 0) missing(`Which drum? ${word} 0575 at 0810 because seal broken.`);
    const reason = reasonOf(
      parted.because ??
        missing(`Why? End with because and the reason: ${word} 0575 at 0810 because seal broken.`),
    );
    return {
      kind: 'entry',
      ...told,
      words: `${drums.join(', ')} held: ${reason}`,
      flight: null,
      wanted: drums.map((drum) => movement({ kind: 'held', ...told, of: { drum }, reason })),
      doubts: drumDoubts(drums, sheet),
    };
  };

/** "dropped ESK MAR H1 0447 at 1010": from under a helicopter; nobody knows where it is. */
const readDropped: Reader = (parted, sheet) => {
  const told = toldBy(parted, sheet, null);
  const [, fromWord, toWord, helicopter, ...drums] = parted.rest;
  const [from, to] = [placeIn(fromWord, sheet), placeIn(toWord, sheet)];
  if (helicopter === undefined || drums.length === 0)
    throw new LineFault('Which helicopter and which drums? dropped ESK MAR H1 0447.');
  const note = `Dropped from under ${helicopter} between ${from} and ${to}.`;
  return {
    kind: 'entry',
    ...told,
    words: `${drums.length} dropped by ${helicopter} between ${from} and ${to}: ${drums.join(', ')}`,
    flight: null,
    wanted: drums.map((drum) => movement({ kind: 'lost', ...told, drum, place: from, note })),
    doubts: drumDoubts(drums, sheet),
  };
};

/** Lines of drums that are not used, or not there any more. */
export const lossLines: Readonly<Record<string, Reader>> = {
  held: readHeld((why) => why, 'held'),
  rejected: readHeld((why) => `rejected before pumping: ${why}; marked X`, 'rejected'),
  dropped: readDropped,
};
