import { type ShownEntry, useTerritoryNow, whenWords } from '../../phone/index.js';

export const WhatWasSaid = ({ entry }: { readonly entry: ShownEntry }) => {
  const now = useTerritoryNow();
  return (
    <span>
      {entry.words}, {whenWords(entry.clock.at, now)}
    </span>
  );
};
