export { fact, type KeptRequest, keepFact, kept, useKept } from './kept.js';
export { spanWords, territoryNow, useLine } from './line.js';
export { clockNow, isWaiting, keep, type ShownEntry, useEntries } from './outbox.js';
export { Page, useTerritoryNow } from './page.js';
export { Choices, DrumNumber, Main, Notice, Press } from './parts.js';
export { goRound, readsOf } from './round.js';
export { usePromised } from './storage.js';
export { dateWords, dayWords, timeWords, whenWords } from './times.js';
export type { Person } from './who.js';
