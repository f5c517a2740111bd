export { type Act, newId, post, put, remove, useAct, useSender } from './act.js';
export { type Link, useChanges, useLink } from './changes.js';
export {
  type Calendar,
  calendarOf,
  type Settings,
  useCalendar,
  useIsClockAwaited,
  useNow,
  useSettings,
  useTerritoryTime,
} from './clock.js';
export { useDraft } from './draft.js';
export { keepProgram } from './keep-program.js';
export { type KeptBack, keptBack } from './kept-back.js';
export { forgetOldPictures, forgetWho, keepWho } from './kept-pictures.js';
export { useNotSetUpYet } from './not-set-up-yet.js';
export { partOf } from './part-of.js';
export { ApiProblem, type FieldFault, outOfReach } from './problem.js';
export { type Read, useLast, useList, useRead, useReads } from './read.js';
export { createReads } from './reads.js';
export { type Answer, useEntriesWaiting } from './send.js';
export {
  isOfTheOperator,
  type Me,
  mayOfAll,
  mayOfOwnOnly,
  type Session,
  useMay,
  useMe,
  useSession,
} from './session.js';
export { changePassword, findWhoIsHere, signIn, signOut } from './sign-in.js';
export { createStore, useStore } from './store.js';
