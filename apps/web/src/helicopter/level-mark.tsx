import type { Level } from './cache-view.js';
import { levelWords } from './words.js';

const mark: Readonly<Record<Level, string>> = {
  enough: 'level',
  'below minimum': 'level below',
  'below critical': 'level crit',
};

/** A level: a shape that fills, and always the words. */
export const LevelMark = ({ level }: { readonly level: Level }) => (
  <span className={mark[level]}>
    <i aria-hidden="true" />
    {levelWords[level]}
  </span>
);
