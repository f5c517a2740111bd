import { Notice } from './parts.js';

/** The phone could not write it down: what is on the page goes on paper. */
export const NotKept = ({ words }: { readonly words: string | null }) =>
  words === null ? null : <Notice kind="stop" word="Not kept." title={words} />;
