import { createHash } from 'node:crypto';

/** The same id for the same thing, so that a file sent twice is taken once; `nth`: of those that are alike. */
export const uuidOf = (what: string, thing: unknown, nth = 0): string => {
  const hash = createHash('sha256')
    .update(JSON.stringify([what, thing, nth]))
    .digest('hex');
  return `${hash.slice(0, 8)}-${hash.slice(8, 12)}-8${hash.slice(13, 16)}-a${hash.slice(17, 20)}-${hash.slice(20, 32)}`;
};
