export { ActForm } from './act-form.js';
export { ageInWords, isOldCount } from './age.js';
export { useAskedFirst } from './asked-first.js';
export { Button } from './button.js';
export { capital } from './capital.js';
export { Dialog } from './dialog.js';
export { Choice, Entry, Tick } from './entry.js';
export { Field, Fields, TitleBlock } from './field.js';
export { useFocusBack } from './focus-back.js';
export {
  arrowsInto,
  type Key,
  keysOfThePage,
  listenForKeys,
  singleKeys,
  useKeys,
  useSingleKeys,
} from './keys.js';
export { across, type LevelScale, levelScale, litreLines, stepped, topFor } from './level-scale.js';
export { levelsWith } from './levels-with.js';
export { type Level, LevelMark, LevelShape, Lock, StateWord, SurfaceWord } from './marks.js';
export { EmptyLine, MessageLine, ProblemLine, pathWords } from './message.js';
export { NotSetUp } from './not-set-up.js';
export { bothOf, Picture, useWhyOfBefore } from './picture.js';
export { DayPackLink, PrintLink, SlipLinks } from './print-link.js';
export { PrintedFoot } from './printed-foot.js';
export { useIsPrinting } from './printing.js';
export { figure, inWords, Qty, stockInWords, type Unit } from './qty.js';
export { stillToSignWords } from './still-to-sign.js';
export { type Column, Lines } from './table.js';
export { figureIn } from './typed-figure.js';
